/** Behind "do not", these are no orders: "I don't know". */
export const notOrders = new Set(
  "write shoot quote know think care worry ask need matter mind see understand believe like remember have judge blame laugh say recall fancy suppose bother call expect really actually quite tell seem look last work fit match come make want".split(
    " ",
  ),
);

/** Before "do not" and "never", these show a statement: "they don't make them". */
export const subjects = new Set("i we they you people ones these those who he she most some".split(" "));

/** Before "never", these show a statement as well. */
export const beforeNever = new Set(
  "i we they you it he she has have had will would is was are were that which who there can could did does do people".split(
    " ",
  ),
);

/** Verbs with which an order begins. With what happens otherwise behind it, the order is a caution. */
export const careVerbs = new Set(
  "earth ground chock prop brace secure back hold keep support leave wrap cover take pull let put use do make remember start lift lower loosen undo slack slacken catch block tie tape clamp lock stop wear drain mark wet bag mask go turn bring warm heat cool stand clean check set fit line file drill tighten oil grease push slide rotate wind press unhook hook unscrew remove measure wait dry bleed discharge isolate disconnect unplug switch get have point face watch soak rinse lay hang feed cut count test work stop run give add fill replace stay bolt fold".split(
    " ",
  ),
);

/** What makes an order to do something first a caution: "let the pressure out before you undo it". */
export const storedWords = new Set(
  "battery acid pressurised pressurized unplug unplugged isolate isolated discharge discharged disconnect spring springs mainspring pressure tension charge charged live volts hot weight weights loaded wound sprung vacuum steam gas petrol fuel mains power".split(
    " ",
  ),
);
