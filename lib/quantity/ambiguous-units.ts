/**
 * Spellings that name more than one unit. Asked about, unless the writer's region (GB or US) settles it; "-"
 * means it does not.
 *
 *   spellings | what it may be, likeliest first | in GB | in US | question
 */
export const ambiguousTable = `
mil, mils | [mil_i], mm, mL | mm, mL | [mil_i] | a thou (0.001 in), a millimetre or a millilitre
pint, pints, pt, pts | [pt_br], [pt_us] | [pt_br] | [pt_us] | an imperial pint (568 ml) or a US pint (473 ml)
quart, quarts, qt, qts | [qt_br], [qt_us] | [qt_br] | [qt_us] | an imperial quart (1.137 l) or a US quart (0.946 l)
gallon, gallons, gal, gals, galls | [gal_br], [gal_us] | [gal_br] | [gal_us] | an imperial gallon (4.546 l) or a US gallon (3.785 l)
gal/min, gals/min, gpm, GPM, gallons/minute, gallons a minute | [gal_br]/min, [gal_us]/min | [gal_br]/min | [gal_us]/min | imperial gallons (4.546 l) or US gallons (3.785 l) a minute
gal/h, gals/h, gal/hr, gph, GPH, gallons/hour, gallons an hour | [gal_br]/h, [gal_us]/h | [gal_br]/h | [gal_us]/h | imperial gallons (4.546 l) or US gallons (3.785 l) an hour
gill, gills | [gil_br], [gil_us] | [gil_br] | [gil_us] | an imperial gill (142 ml) or a US gill (118 ml)
fl oz, fl ozs, fluid ounce, fluid ounces, fluid oz, floz | [foz_br], [foz_us] | [foz_br] | [foz_us] | an imperial fluid ounce (28.4 ml) or a US fluid ounce (29.6 ml)
ton, tons | [lton_av], [ston_av], t | [lton_av] | [ston_av] | a long ton (2240 lb), a short ton (2000 lb) or a tonne
cwt, hundredweight | [lcwt_av], [scwt_av] | [lcwt_av] | [scwt_av] | a long hundredweight (112 lb) or a short one (100 lb)
hp, HP, h.p., horsepower, horse power, horse | [HP], 75.kgf.m/s | [HP] | [HP] | imperial horsepower (745.7 W) or metric horsepower, PS (735.5 W)
degree, degrees, deg, degs | deg, Cel, [degF] | - | - | an angle, degrees Celsius or degrees Fahrenheit
tenth, tenths | 10*-4.[in_i], 10*-1.mm, 10*-1.[in_i] | - | - | tenths of a thou (0.0001 in), of a millimetre or of an inch
mF, MF, mf | uF, mF | - | - | microfarads as on old parts, or millifarads
gr, grs | g, [gr] | - | - | grams or grains
kg/cm, kgf/cm, kgs/cm | kgf.cm, kgf/cm2 | - | - | a torque in kilogram-force centimetres, or a pressure on the square centimetre
K | K, kOhm | - | - | kelvin or kilohms
M | MOhm, m | - | - | megohms or metres
lb/ft, lbs/ft, lbf/ft, pounds/foot | [lbf_av].[ft_i], [lbf_av]/[ft_i] | - | - | a torque in pound-feet, or pounds for each foot
fl oz/gallon, fl oz/gal, fl oz to the gallon, fluid ounces to the gallon, fluid ounces/gallon, oz/gallon, oz to the gallon, oz/gal, ounces to the gallon, ounces/gallon, fl oz a gallon | [foz_br]/[gal_br], [foz_us]/[gal_us] | [foz_br]/[gal_br] | [foz_us]/[gal_us] | fluid ounces to the imperial gallon (160) or to the US gallon (128)
`;

/**
 * Spellings that mean something else where the field is known to hold a certain dimension: "12 oz" of oil is
 * no mass, and "40 lb" is no torque until it is said whether feet or inches go with it.
 *
 *   spellings | dimension of the field | what it may be | in GB | in US | question
 */
export const expectedTable = `
oz, ozs, ounce, ounces | volume | [foz_br], [foz_us] | [foz_br] | [foz_us] | an imperial fluid ounce (28.4 ml) or a US fluid ounce (29.6 ml)
lb, lbs, pound, pounds | torque | [lbf_av].[ft_i], [lbf_av].[in_i] | - | - | pound-feet or pound-inches
lb, lbs, pound, pounds | force | [lbf_av] | [lbf_av] | [lbf_av] | pounds of force
lb, lbs, pound, pounds | pressure | [psi] | [psi] | [psi] | pounds on the square inch
° | temperature | Cel, [degF] | Cel | [degF] | degrees Celsius or degrees Fahrenheit
kg, kgs, kilo, kilos | torque | kgf.m, kgf.cm | - | - | kilogram-force metres or centimetres
kg, kgs, kilo, kilos | pressure | kgf/cm2 | kgf/cm2 | kgf/cm2 | kilograms-force on the square centimetre
kg, kgs, kilo, kilos | force | kgf | kgf | kgf | kilograms of force
g, gram, grams, gramme, grammes | force | gf | gf | gf | grams of force
`;
