/**
 * Units as they are said and heard, and their UCUM codes:
 *
 *   code | what is said, most usual first
 *
 * Words stand apart by blanks. A spelling in capitals counts only where it is glued to its figure ("3in", "12v"),
 * since it is another word elsewhere. What several units share stands in `unitsByContext` below.
 */
export const spokenUnits = `
[in_i] | inch, inches, IN, INS, ″, "
[mil_i] | thou, thous, thow, thousandth, thousandths, thousands, thou of an inch, thousandth of an inch, thousandths of an inch, thousands of an inch
[ft_i] | foot, feet, ft
[yd_i] | yard, yards
[mi_i] | mile, miles
mm | millimetre, millimetres, millimeter, millimeters, mm, mms
cm | centimetre, centimetres, centimeter, centimeters, cm, cms
m | metre, metres, meter, meters, M
um | micron, microns, micrometre, micrometres
[sin_i] | square inch, square inches, sq inch, sq inches
cm2 | square centimetre, square centimetres, square centimeter, square centimeters
/[in_i] | threads per inch, threads to the inch, threads an inch, threads an inch, thread per inch, tpi, t p i, teeth per inch, teeth to the inch, to the inch, per inch
[lbf_av].[ft_i] | foot pounds, foot pound, foot lbs, ft lbs, ft lb, pound feet, pounds feet, pound foot, pounds foot, lb ft, pounds of torque, foot pounds of torque
[lbf_av].[in_i] | inch pounds, inch pound, inch lbs, in lbs, pound inches, pounds inch, pound inch, pounds inches
N.m | newton metres, newton metre, newton meters, newton meter, newtons metre, newtons meter, n m, nm
[psi] | psi, p s i, pounds per square inch, pounds a square inch, pounds to the square inch, lbs per square inch, lbs psi, pounds psi
bar | bar, bars
mbar | millibar, millibars
kPa | kilopascals, kilopascal, kpa
MPa | megapascals, mpa
[in_i'Hg] | inches of mercury, inches of vacuum, inches mercury, inch of mercury
[in_i'H2O] | inches of water, inch of water, inches water gauge, inches water
Cel | degrees c, degrees celsius, degrees centigrade, degree c, degree celsius, celsius, centigrade, ° c, °c
[degF] | degrees f, degrees fahrenheit, degree f, degree fahrenheit, fahrenheit, ° f, °f
[lb_av] | lb, lbs
[oz_av] | oz
g | gram, grams, gramme, grammes, G
kg | kilo, kilos, kilogram, kilograms, kilogramme, kilogrammes, kg, kgs, KG
[lton_av] | long ton, long tons
t | tonne, tonnes, metric ton, metric tons
[lbf_av] | pounds of force, pounds force, pounds of pull, pounds pull, pounds of tension, pounds of load, pounds of pressure on the spring, lbf
N | newton, newtons
mL | millilitre, millilitres, milliliter, milliliters, ml, mls, cc, ccs, c c, cubic centimetres, cubic centimeters
L | litre, litres, liter, liters, LTR
L/min | litres a minute, litres per minute, liters a minute, liters per minute, litre a minute
[gal_us]/min | gpm
[foz_us] | fluid ounce, fluid ounces, fl oz
[tbs_us] | tablespoon, tablespoons, tablespoonful, tablespoonfuls, tablespoonsful
[tsp_us] | teaspoon, teaspoons, teaspoonful, teaspoonfuls
[cin_i] | cubic inch, cubic inches
V | volt, volts, vdc, vac, volts dc, volts ac, V
mV | millivolt, millivolts
kV | kilovolt, kilovolts, kv
A | amp, amps, ampere, amperes, A
mA | milliamp, milliamps, milliampere, milliamperes, ma
uA | microamp, microamps
Ohm | ohm, ohms, Ω, R
kOhm | k, kilohm, kilohms, k ohm, k ohms, kay, kilo ohm, kilo ohms, kΩ
MOhm | meg, megs, megohm, megohms, meg ohm, meg ohms, mega ohm, mega ohms
mOhm | milliohm, milliohms
uF | microfarad, microfarads, micro farad, micro farads, mic, mics, mike, mikes, mfd, uf, micros, µf
nF | nanofarad, nanofarads, nano farads, nf, nano, nanos
pF | picofarad, picofarads, pico farads, puff, puffs, pf, mmfd, micro microfarad, micro microfarads
mH | millihenry, millihenries, millihenrys
H | henry, henries, henrys
W | watt, watts, W
kW | kilowatt, kilowatts, kw
[HP] | horse, horsepower, horse power, hp, h p
Hz | hertz, hz, cycles a second, cycles per second
kHz | kilohertz, khz, kilocycle, kilocycles, kc, kcs, k c
MHz | megahertz, mhz, megacycle, megacycles
{rev}/min | rpm, r p m, revs a minute, revs per minute, rev per minute, revolutions a minute, revolutions per minute, turns a minute, turns per minute, revs
circ | turn, turns, revolution, revolutions, full turn, full turns, complete turn, complete turns, whole turn, whole turns
deg | degrees of arc, degrees btdc, degrees atdc
ms | millisecond, milliseconds
s | second, seconds, sec, secs
min | minute, minutes, min, mins
h | hour, hours, hrs
d | day, days
wk | week, weeks
mo | month, months
a | year, years
[mi_i]/h | miles an hour, miles per hour, mph
[ft_i]/min | feet per minute, feet a minute, surface feet
[in_i]/min | inches per minute, inches a minute
{tooth} | tooth, teeth
% | percent, per cent, %
dB | decibel, decibels, db
`;

/** Units of which the code depends on who speaks, and of what; `draft/unit-choice.ts` decides. */
export const unitsByContext = `
mil | mil, mils, mill, mills
pint | pint, pints
quart | quart, quarts
gallon | gallon, gallons
gill | gill, gills
ton | ton, tons
ounce | ounce, ounces
pound | pound, pounds
degree | degree, degrees, °, deg, degs
tenth | tenth, tenths
each | a minute, per minute, every minute, a second, per second, an hour, per hour, every hour
though | though, tho
thousand | thousand
`;

/** What may be counted in a minute or an hour, where it stands between the number and "a minute". */
export const countedInTime = new Set(
  "beat beats stroke strokes drop drops drip drips stitch stitches word words impression impressions cycle cycles pulse pulses tick ticks count counts sheet sheets swing swings shot shots copies strikes blow blows rotation rotations vibration vibrations".split(
    " ",
  ),
);
