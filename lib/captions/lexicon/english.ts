/**
 * Words that show whether the speaker is British or American. Spelling shows nothing: recognisers write "center" and
 * "tire" for everybody. Each word counts once for every time it is said.
 */
export const britishWords = new Set(
  "quid mate cheers reckon nought spanner spanners paraffin petrol meths bloke whilst bodge bodged bodger rubbish nan nans mum grandad telly ta hiya crikey blimey bloody tenner fiver pence pint tyre tyres aluminium millimetre millimetres centimetre litre litres metre metres whit whitworth bsf bsp ba imperial lorry skip shed fettle fettled knackered naff faff lathe allotment fortnight treadle caravan grub circlip gudgeon cotter biro sellotape plimsoll jubilee thou mil owt nowt summat lad lads chuffed trousers bin binned kettle biscuit biscuits treacle toffee loo garage shopper postie obviously lovely proper tins".split(
    " ",
  ),
);

/** Words that speak for an American. */
export const americanWords = new Set(
  "folks buck bucks dollar dollars cent cents nickel dime quarter's wrench wrenches gas gasoline kerosene aluminum flashlight trash math gotten y'all yall howdy awesome dude guys fahrenheit thousandths wrist babbitt unc unf hardware truck yard garage sale railroad lube ohmmeter harbor gallons quarts ounces sophomore mom dad neighbor craigslist duct shop figured color motor dang darn gonna rod inches pounds snug stump pee".split(
    " ",
  ),
);

/** Words that settle it alone, and count five times. */
export const surelyBritish = new Set(
  "quid paraffin petrol meths spanner spanners bsf whitworth whit ba nought tenner fiver cheers pence bodge telly mum nan hiya".split(
    " ",
  ),
);
/** Words that only an American says. */
export const surelyAmerican = new Set(
  "bucks dollars dollar cents aluminum gasoline kerosene fahrenheit folks wrench trash y'all babbitt unc math gotten neighbor".split(
    " ",
  ),
);
