/** Words nearby that tell what a unit with several meanings is of. */

/** Liquids and their vessels: "190 mil" of oil, "11 ounces" in a gear case. */
export const liquidWords = new Set(
  "oil fluid fill fills filled hold holds capacity drain drained drains pour poured lube lubricant grease water coolant paraffin petrol diesel kerosene sump tank crankcase pint pints litre litres gallon quart syringe squirt milkshake top mix mixture fuel reservoir bottle milk shot coffee dose tin beaker jug".split(
    " ",
  ),
);

/** Behind "mil of": a liquid. */
export const liquids = new Set(
  "oil fluid water petrol diesel paraffin kerosene coolant spirit meths fuel grease lube lubricant alcohol acid vinegar coffee milk".split(
    " ",
  ),
);

/** Before "mil": something is filled or holds. */
export const fillingWords = new Set(
  "hold holds fill fills filled pour poured drain drained squirt squirted inject injected add added capacity takes shot dose syringe top topped".split(
    " ",
  ),
);

/** Money: "forty pounds". */
export const priceWords = new Set(
  "cost costs new ordered replacement gave paid pay price quid worth owes owe bought sold buy sell selling spend spent cheap expensive bargain auction ebay pence bill bargained charged charge postage deposit shop charity boot jumble market stall fair sale".split(
    " ",
  ),
);

/** Weight: "two pounds". */
export const weightWords = new Set(
  "weigh weighs weighed weighing weight hammer heavy sledge lump ballast".split(" "),
);

/** The pull of a spring, the load on a thing. */
export const pullWords = new Set(
  "pull pulls tension spring springs squeeze load scale balance force preload drag push pressure hook".split(
    " ",
  ),
);

/** Pressure: "fifty five pounds" in a tyre. */
export const pressureWords = new Set(
  "tyre tyres tire tires inflate inflated psi steam boiler gauge compressor air blow blows relief safety compression pressure pumped bar".split(
    " ",
  ),
);

/** Torque: "thirty pounds" on a wrench. */
export const torqueWords = new Set("torque torqued torques torquing tighten tightened wrench nip".split(" "));

/** Degrees of an angle. */
export const angleWords = new Set(
  "tilts tilting table protractor square mitred angled sector crank flywheel timing btdc atdc tdc advance advanced retard retarded angle angles taper lift drop lean leans tilt tilted cone seat seats included beat amplitude chamfer bevel dwell rotation crankshaft rake helix pallet pallets lock arc swing swings vee dead camber toe castor mitre bend bent rotate rotated apart spacing mark shake chamfered".split(
    " ",
  ),
);

/** Degrees of heat. */
export const heatWords = new Set(
  "oven heat heated heating heats hot cold warm warmed temperature temp water oil boil boiling room thermometer probe infrared bake baked baking solder soldering casing casting hopper head coolant thermostat melt melts anneal temper tempered cool cooled bath burner flame gun exhaust running ran fridge freezer reads stove torch grill ambient bearing bearings".split(
    " ",
  ),
);

/** Currents in valve sets, where "40 mils" are milliamperes. */
export const currentWords = new Set(
  "current draw draws drawing plate anode cathode screen bias meter heater".split(" "),
);

/** Words that show a set to be electrical, so that "470 k" is a resistance. */
export const electricalWords = new Set(
  "volt volts ohm ohms resistor resistors capacitor capacitors cap caps amp amps transformer rectifier winding windings megger multimeter chassis diode transistor microfarad condenser coil".split(
    " ",
  ),
);

/** Behind a length: what it is the size of, so that "4 mil screw" is no volume. */
export const sizedWords = new Set(
  "outside inside wide long deep thick high tall across diameter bore hole holes screw screws bolt bolts bar rod shaft pin drill tap nut spanner plate sheet washer wire square hide rubber cord radius gap clearance below above out off".split(
    " ",
  ),
);
