/**
 * Every unit that is read, one a line:
 *
 *   UCUM code | what is measured | exact factor to SI | symbol, then other spellings | other system | source
 *
 * A factor may be a product or a quotient of decimals ("0.45359237*9.80665*0.3048"); "pi" may stand in it
 * once. In spellings a space also stands for a hyphen, a dot or nothing; plurals and capitals are listed
 * only where they are not plain. SI units: metre, kilogram, second, kelvin, ampere, radian; speed of
 * rotation in turns a second.
 *
 * Sources: SI = SI Brochure, 9th ed. · SP = NIST SP 811 (2008), appendix B · HB = NIST Handbook 44, appendix C
 * · WM = Weights and Measures Act 1985, schedule 1 · UC = UCUM, ucum.org · TR = usage of the trade, no source
 */
export const unitTable = `
[in_i] | length | 0.0254 | in, in., inch, inches, ins, ", '' | mm | SP
[mil_i] | length | 0.0000254 | thou, thous, thousandth, thousandths, thousandth of an inch, thousandths of an inch, thousands of an inch | mm | SP
10*-4.[in_i] | length | 0.00000254 | tenths of a thou, tenth of a thou, ten thousandths of an inch | um | SP
[ft_i] | length | 0.3048 | ft, ft., foot, feet, ' | m | SP
[yd_i] | length | 0.9144 | yd, yds, yard, yards | m | SP
[fth_i] | length | 1.8288 | fathom, fathoms | m | SP
[mi_i] | length | 1609.344 | mile, miles | km | SP
nm | length | 0.000000001 | nm, nanometre, nanometres | | SI
um | length | 0.000001 | µm, um, micron, microns, micrometre, micrometres, micrometer, micrometers | [mil_i] | SI
mm | length | 0.001 | mm, millimetre, millimetres, millimeter, millimeters, mms | [in_i] | SI
cm | length | 0.01 | cm, centimetre, centimetres, centimeter, centimeters | [in_i] | SI
m | length | 1 | m, metre, metres, meter, meters | [ft_i] | SI
km | length | 1000 | km, kilometre, kilometres, kilometer, kilometers | [mi_i] | SI
[sin_i] | area | 0.0254*0.0254 | in², sq in, in2, square inch, square inches, sq inch, sq inches, sq ins | cm2 | SP
[sft_i] | area | 0.3048*0.3048 | ft², sq ft, ft2, square foot, square feet | m2 | SP
43560.[sft_i] | area | 43560*0.3048*0.3048 | acre, acres | m2 | WM
mm2 | area | 0.000001 | mm², mm2, sq mm, square millimetre, square millimetres, square millimeters | [sin_i] | SI
cm2 | area | 0.0001 | cm², cm2, sq cm, square centimetre, square centimetres, square centimeters | [sin_i] | SI
m2 | area | 1 | m², m2, sq m, square metre, square metres, square meters | [sft_i] | SI
uL | volume | 0.000000001 | µL, µl, ul | | SI
mL | volume | 0.000001 | ml, mL, millilitre, millilitres, milliliter, milliliters, mls | | SI
cL | volume | 0.00001 | cl, cL, centilitre, centilitres | | SI
dL | volume | 0.0001 | dl, dL | | SI
L | volume | 0.001 | l, L, ℓ, litre, litres, liter, liters, ltr, ltrs | | SI
cm3 | volume | 0.000001 | cc, cm³, cm3, ccm, ccs, cu cm, cubic centimetre, cubic centimetres, cubic centimeters, c.c. | [cin_i] | SI
m3 | volume | 1 | m³, m3, cubic metre, cubic metres, cubic meters | [cft_i] | SI
[cin_i] | volume | 0.0254*0.0254*0.0254 | cu in, in³, in3, cubic inch, cubic inches, cu ins, cid, cuin | cm3 | SP
[cft_i] | volume | 0.3048*0.3048*0.3048 | cu ft, ft³, ft3, cubic foot, cubic feet | m3 | SP
[gal_br] | volume | 0.00454609 | imp gal, imperial gallon, imperial gallons, imp gallon, imp gallons, UK gallon, UK gallons, UK gal, gal (imp), gallon (imp), gallons (imp), gallons (imperial), gallons imp, gal imp, gals imp, gallon imp, gallons imperial | L | WM
[qt_br] | volume | 0.00454609/4 | imp qt, imperial quart, imperial quarts, imp quart, imp quarts, UK quart, UK quarts, UK qt | L | WM
[pt_br] | volume | 0.00454609/8 | imp pt, imperial pint, imperial pints, imp pint, imp pints, UK pint, UK pints, UK pt, pint (imp), pints (imp), pints (imperial), pints imp, pts imp, pt imp, pints imperial | mL | WM
[gil_br] | volume | 0.00454609/32 | imp gill, imperial gill, imperial gills, imp gills | mL | WM
[foz_br] | volume | 0.00454609/160 | imp fl oz, imperial fluid ounce, imperial fluid ounces, imp fluid ounce, imp fluid ounces, UK fl oz, UK fluid ounces | mL | WM
[gal_us] | volume | 0.003785411784 | US gal, US gallon, US gallons, gal (US), gallons (US), gallon (US) | L | HB
[qt_us] | volume | 0.003785411784/4 | US qt, US quart, US quarts, quarts (US) | L | HB
[pt_us] | volume | 0.003785411784/8 | US pt, US pint, US pints, pints (US), pint (US) | mL | HB
[gil_us] | volume | 0.003785411784/32 | US gill, US gills | mL | HB
[foz_us] | volume | 0.003785411784/128 | US fl oz, US fluid ounce, US fluid ounces | mL | HB
L/s | volume flow | 0.001 | l/s, l/sec, litres/second, liters/second, litre/second | | SI
L/min | volume flow | 0.001/60 | l/min, lpm, L/min, litres/minute, liters/minute, litre/minute, litres a minute, l/minute | | SI
L/h | volume flow | 0.001/3600 | l/h, L/h, l/hr, lph, litres/hour, liters/hour, litre/hour, litres an hour, l/hour | | SI
mL/min | volume flow | 0.000001/60 | ml/min, cc/min, ml/minute, cc/minute, cc a minute, ml a minute | | SI
m3/h | volume flow | 1/3600 | m³/h, m3/h, m³/hr, m3/hr, cubic metres/hour, cubic metres an hour | | SI
m3/min | volume flow | 1/60 | m³/min, m3/min, cubic metres/minute, cubic metres a minute | [cft_i]/min | SI
[cft_i]/min | volume flow | 0.3048*0.3048*0.3048/60 | cfm, CFM, cu ft/min, ft³/min, ft3/min, cubic feet/minute, cubic feet a minute, cu ft/minute | L/min | SP
[gal_br]/min | volume flow | 0.00454609/60 | imp gal/min, imperial gallons/minute, imperial gallons a minute, imp gpm, UK gpm | L/min | WM
[gal_br]/h | volume flow | 0.00454609/3600 | imp gal/h, imperial gallons/hour, imperial gallons an hour, imp gph, UK gph | L/h | WM
[gal_us]/min | volume flow | 0.003785411784/60 | US gal/min, US gallons/minute, US gallons a minute, US gpm | L/min | HB
[gal_us]/h | volume flow | 0.003785411784/3600 | US gal/h, US gallons/hour, US gallons an hour, US gph | L/h | HB
kg/m3 | density | 1 | kg/m³, kg/m3 | | SI
g/cm3 | density | 1000 | g/cm³, g/cm3, g/cc, g/ml | | SI
g/L | density | 1 | g/l, g/L, g/litre, grams/litre, grams a litre | | SI
mg | mass | 0.000001 | mg, milligram, milligrams | | SI
g | mass | 0.001 | g, gm, gms, gram, grams, gramme, grammes, grm, grms | [oz_av] | SI
kg | mass | 1 | kg, kgs, kilo, kilos, kilogram, kilograms, kilogramme, kilogrammes | [lb_av] | SI
t | mass | 1000 | t, tonne, tonnes, metric ton, metric tons | [lb_av] | SI
[lb_av] | mass | 0.45359237 | lb, lbs, lb., pound, pounds | kg | SP
[oz_av] | mass | 0.45359237/16 | oz, ozs, oz., ounce, ounces | g | SP
[dr_av] | mass | 0.45359237/256 | drams avoirdupois, dram avoirdupois | g | HB
[gr] | mass | 0.00006479891 | grain, grains | g | SP
[lbf_av].s2/[ft_i] | mass | 0.45359237*9.80665/0.3048 | slug, slugs | kg | SP
[stone_av] | mass | 6.35029318 | st, stone, stones | kg | WM
28.[lb_av] | mass | 28*0.45359237 | qr, qrs | kg | WM
[lcwt_av] | mass | 50.80234544 | long cwt, imperial hundredweight | kg | WM
[scwt_av] | mass | 45.359237 | short cwt, US hundredweight | kg | HB
[lton_av] | mass | 1016.0469088 | long ton, long tons, imperial ton, imperial tons, UK ton, UK tons | t | WM
[ston_av] | mass | 907.18474 | short ton, short tons, US ton, US tons | t | HB
[oz_tr] | mass | 0.0311034768 | oz t, troy ounce, troy ounces | g | SP
dyn | force | 0.00001 | dyn, dyne, dynes | N | SP
N | force | 1 | N, newton, newtons | [lbf_av] | SI
[lb_av].[ft_i]/s2 | force | 0.45359237*0.3048 | pdl, poundal, poundals | N | SP
daN | force | 10 | daN, decanewton, decanewtons | [lbf_av] | SI
kN | force | 1000 | kN, kilonewton, kilonewtons | [lbf_av] | SI
mN | force | 0.001 | mN, millinewton, millinewtons | | SI
[lbf_av] | force | 0.45359237*9.80665 | lbf, lb f, lbs f, pound force, pounds force | N | SP
[oz_av].[g] | force | 0.45359237*9.80665/16 | ozf, ounce force, ounces force | N | SP
gf | force | 0.00980665 | gf, gram force, grams force, gramme force, pond, ponds | N | SP
kgf | force | 9.80665 | kgf, kg f, kilogram force, kilograms force, kilopond, kiloponds, kp | N | SP
[lton_av].[g] | force | 1016.0469088*9.80665 | tonf, ton f, tons force, ton force | kN | SP
N.m | torque | 1 | N·m, N m, Nm, NM, newton metre, newton metres, newton meter, newton meters, N-m, Nms | [lbf_av].[ft_i] | SI
mN.m | torque | 0.001 | mN·m, mN m, mNm | [oz_av].[g].[in_i] | SI
N.cm | torque | 0.01 | N·cm, N cm, Ncm | [lbf_av].[in_i] | SI
daN.m | torque | 10 | daN·m, daN m, daNm, da N m | [lbf_av].[ft_i] | SI
kN.m | torque | 1000 | kN·m, kN m, kNm | [lbf_av].[ft_i] | SI
kgf.m | torque | 9.80665 | kgf·m, kgf m, kg m, kp m, m kg, m kp, m kgf, kilogram metre, kilogram metres, kilogram meters, kilopond metres, metre kilograms | N.m | SP
kgf.cm | torque | 0.0980665 | kgf·cm, kgf cm, kg cm, cm kg, cm kgf, kp cm, cm kp | N.m | SP
gf.cm | torque | 0.0000980665 | gf·cm, gf cm, g cm | mN.m | SP
[lbf_av].[ft_i] | torque | 0.45359237*9.80665*0.3048 | lbf ft, lbf·ft, ft lbf, lb ft, lbs ft, ft lb, ft lbs, ft/lb, ft/lbs, foot lb, foot lbs, foot pound, foot pounds, pound foot, pound feet, pounds feet, pounds foot, feet pounds, ftlb, ftlbs, lbft, lbf foot, foot lbf, ft pound, ft pounds | N.m | SP
[lbf_av].[in_i] | torque | 0.45359237*9.80665*0.0254 | lbf in, lbf·in, in lbf, lb in, lbs in, in lb, in lbs, in/lb, in/lbs, inch lb, inch lbs, inch pound, inch pounds, pound inch, pound inches, pounds inch, lbf inch, inch lbf, inlb, inlbs, lbs ins | N.m | SP
[oz_av].[g].[in_i] | torque | 0.45359237*9.80665*0.0254/16 | ozf in, oz in, in oz, in ozf, ozs in, inch ounce, inch ounces, ounce inch, ounce inches, inch oz | mN.m | SP
Pa | pressure | 1 | Pa, pascal, pascals | | SI
kPa | pressure | 1000 | kPa, kilopascal, kilopascals | [psi] | SI
MPa | pressure | 1000000 | MPa, megapascal, megapascals, N/mm2, N/mm² | [psi] | SI
GPa | pressure | 1000000000 | GPa | | SI
hPa | pressure | 100 | hPa, hectopascal | [psi] | SI
bar | pressure | 100000 | bar, bars, barg, bara | [psi] | SI
mbar | pressure | 100 | mbar, millibar, millibars, mb | [psi] | SI
[psi] | pressure | 0.45359237*9.80665/0.0254/0.0254 | psi, psig, psia, p.s.i., lbf/in², lbf/in2, lb/in², lb/in2, lbs/in², lbs/in2, lb/sq in, lbs/sq in, lbf/sq in, lb sq in, lbs sq in, pound/square inch, pounds/square inch, lb/square inch, lbs/square inch, pounds/sq in | bar | SP
atm | pressure | 101325 | atm, atmosphere, atmospheres | bar | SP
att | pressure | 98066.5 | att, technical atmosphere, technical atmospheres | bar | SP
kgf/cm2 | pressure | 98066.5 | kgf/cm², kgf/cm2, kg/cm2, kg/cm², kp/cm2, kp/cm², kgf/sq cm, kg/sq cm, kg cm2, kg cm² | [psi] | SP
[in_i'Hg] | pressure | 13595.1*9.80665*0.0254 | inHg, in Hg, "Hg, " Hg, inch Hg, inches Hg, ins Hg, inch of mercury, inches of mercury, in of mercury, in mercury, inches mercury, in of Hg, inches of Hg | kPa | SP
mm[Hg] | pressure | 13595.1*9.80665*0.001 | mmHg, torr, Torr, mm Hg, mm of mercury, millimetres of mercury, mm of Hg | kPa | SP
[in_i'H2O] | pressure | 1000*9.80665*0.0254 | inH2O, in H2O, inH₂O, in H₂O, inches H2O, inches of H2O, inch H2O, in wg, in WG, inWG, "wg, "WG, " wg, " WG, " w.g., in w.g., "H2O, inches of water, inch of water, inches water gauge, inch water gauge, in of water, in water gauge | kPa | SP
mm[H2O] | pressure | 9.80665 | mmH2O, mm H2O, mm wg, mm WG, mm of water | | SP
[lton_av].[g]/[in_i]2 | pressure | 1016.0469088*9.80665/0.0254/0.0254 | tonf/in², tonf/in2, ton/in2, tons/in2, tons/in², ton/sq in, tons/sq in, tons/square inch, tonf/sq in | MPa | SP
Cel | temperature | 1 | °C, ° C, ℃, C, deg C, degC, degs C, degree C, degrees C, degree Celsius, degrees Celsius, degrees Centigrade, degree Centigrade, celsius, centigrade, ° Celsius, °c | [degF] | SI
[degF] | temperature | 5/9 | °F, ° F, ℉, F, deg F, degF, degs F, degree F, degrees F, degree Fahrenheit, degrees Fahrenheit, fahrenheit, ° Fahrenheit, °f | Cel | SP
K | temperature | 1 | K, kelvin, kelvins | | SI
circ | angle | 2*pi | turns, turn, rev, revs, revolution, revolutions, full turn, full turns, complete turn, complete turns, whole turns, rotations, rotation | deg | SP
60.deg | angle | pi/3 | flats, flat | deg | TR
deg | angle | pi/180 | °, deg (angle), degrees of arc, angular degrees | | SI
' | angle | pi/10800 | ′, arcmin, arc min, minutes of arc, minute of arc, arc minute, arc minutes, arcminutes | | SI
'' | angle | pi/648000 | ″, arcsec, arc sec, seconds of arc, second of arc, arc seconds, arcseconds | | SI
rad | angle | 1 | rad, radian, radians | deg | SI
us | time | 0.000001 | µs, us, microsecond, microseconds | | SI
ms | time | 0.001 | ms, msec, millisecond, milliseconds | | SI
s | time | 1 | s, sec, secs, second, seconds, sec., secs. | | SI
min | time | 60 | min, mins, minute, minutes, min., mins. | | SI
h | time | 3600 | h, hr, hrs, hour, hours, hr., hrs. | | SI
d | time | 86400 | d, day, days | | SI
wk | time | 604800 | week, weeks, wk, wks | | UC
mo | time | 2629800 | month, months | | UC
a | time | 31557600 | year, years, yr, yrs | | UC
{rev}/min | rotational speed | 1/60 | rpm, rev/min, r/min, r.p.m., revs/min, revs/minute, rev/minute, revolutions/minute, turns/minute, turns/min, turn/minute, rpms, U/min, revs a minute, turns a minute, rev a minute, turn a minute, revolution a minute, revolutions a minute | | SP
{rev}/s | rotational speed | 1 | rev/s, rps, r/s, revs/second, revs/sec, rev/sec, turns/second, revolutions/second | | SP
{rev}/h | rotational speed | 1/3600 | rev/h, rev an hour, revs an hour, turn an hour, turns an hour, revs/hour, turns/hour, turn/hour, revolutions/hour | | SP
rad/s | rotational speed | 1/2/pi | rad/s, radians/second | {rev}/min | SI
/min | frequency | 1/60 | /min, a minute, /minute, times a minute, bpm, beats/minute, beats/min, strokes/minute, stitches/minute, spm, cycles/minute, strokes/min, stitches/min, beats a minute, strokes a minute, stitches a minute | | SI
/h | frequency | 1/3600 | /h, /hour, an hour, beats/hour, vibrations/hour, bph, vph, beats an hour, vibrations an hour, beats/h, vib/h, A/h, a/h, alternations/hour | | SI
/s | frequency | 1 | /s, /second, a second, beats/second, strokes/second, per sec | | SI
Hz | frequency | 1 | Hz, hertz, c/s, cps, cycle/second, cycles/second, cycles/sec, cycles | | SI
kHz | frequency | 1000 | kHz, kc/s, kc, kcs, kilohertz, kilocycle, kilocycles | | SI
MHz | frequency | 1000000 | MHz, Mc/s, Mcs, megahertz, megacycle, megacycles | | SI
m/s | speed | 1 | m/s, metre/second, metres/second, meters/second | [ft_i]/s | SI
mm/s | speed | 0.001 | mm/s | | SI
cm/s | speed | 0.01 | cm/s, cm/sec | [in_i]/s | SI
[in_i]/s | speed | 0.0254 | in/s, ips, in/sec, inches/second | cm/s | SP
m/min | speed | 1/60 | m/min, metre/minute, metres/minute, meters/minute | [ft_i]/min | SI
mm/min | speed | 0.001/60 | mm/min | [in_i]/min | SI
km/h | speed | 1/3.6 | km/h, kph, kmh, kilometres/hour, kilometers/hour | [mi_i]/h | SI
[kn_i] | speed | 1852/3600 | knot, knots | km/h | SP
[mi_i]/h | speed | 0.44704 | mph, mi/h, m.p.h., miles/hour, mile/hour | km/h | SP
[ft_i]/s | speed | 0.3048 | ft/s, ft/sec, fps, feet/second | m/s | SP
[ft_i]/min | speed | 0.3048/60 | ft/min, fpm, sfm, sfpm, feet/minute, surface feet/minute | m/min | SP
[in_i]/min | speed | 0.0254/60 | in/min, ipm, inches/minute | mm/min | SP
mW | power | 0.001 | mW, milliwatt, milliwatts | | SI
W | power | 1 | W, watt, watts, w | | SI
kW | power | 1000 | kW, kilowatt, kilowatts | [HP] | SI
kV.A | power | 1000 | kVA, kV·A | | SI
V.A | power | 1 | VA, V·A, volt amp, volt amps, volt amperes | | SI
[HP] | power | 0.45359237*9.80665*0.3048*550 | hp, hp (mechanical), bhp, b.h.p., brake horsepower, brake hp, ihp, i.h.p., indicated horsepower, shp, mechanical horsepower, imperial horsepower, hp (imperial), imperial hp | kW | SP
75.kgf.m/s | power | 735.49875 | PS, ps, CV, cv, ch, pk, metric hp, metric horsepower, hp (metric), horsepower (metric), pferdestärke | kW | SP
cal_th | energy | 4.184 | cal, calorie, calories | J | SP
erg | energy | 0.0000001 | erg, ergs | J | SP
J | energy | 1 | J, joule, joules | | SI
kJ | energy | 1000 | kJ, kilojoule, kilojoules | | SI
MJ | energy | 1000000 | MJ | | SI
W.h | energy | 3600 | Wh, W·h, W h, watt hour, watt hours | | SI
kW.h | energy | 3600000 | kWh, kW·h, kW h, kilowatt hour, kilowatt hours | | SI
[Btu_IT] | energy | 1055.05585262 | Btu, BTU, BTUs, Btus, british thermal units | kJ | SP
uV | voltage | 0.000001 | µV, uV, microvolt, microvolts | | SI
mV | voltage | 0.001 | mV, millivolt, millivolts | | SI
V | voltage | 1 | V, volt, volts, v, V a.c., V d.c., volts a.c., volts d.c., V DC, V AC, VDC, VAC, Vdc, Vac, v dc, v ac, volts DC, volts AC, Vrms, V RMS, volts dc, volts ac, V rms | | SI
kV | voltage | 1000 | kV, kilovolt, kilovolts | | SI
uA | current | 0.000001 | µA, uA, microamp, microamps, microampere, microamperes | | SI
mA | current | 0.001 | mA, milliamp, milliamps, milliampere, milliamperes | | SI
A | current | 1 | A, amp, amps, ampere, amperes, A DC, A AC | | SI
uOhm | resistance | 0.000001 | µΩ, uohm, microhm, microhms | | SI
mOhm | resistance | 0.001 | mΩ, milliohm, milliohms, mohm, mohms, m ohm | | SI
Ohm | resistance | 1 | Ω, ohm, ohms, ω | | SI
kOhm | resistance | 1000 | kΩ, KΩ, kohm, kohms, kilohm, kilohms, kiloohm, kiloohms, k ohm, k ohms, K ohm, K ohms, k Ω, Kohm, Kohms | | SI
MOhm | resistance | 1000000 | MΩ, Mohm, Mohms, megohm, megohms, meg, megs, M ohm, M ohms, megaohm, megaohms, M Ω, Meg | | SI
pF | capacitance | 0.000000000001 | pF, mmfd, mmf, mmF, µµF, uuF, µµf, uuf, micromicrofarad, micromicrofarads, mmfds, picofarad, picofarads, micro micro farads, MMF, MMFD | | SI
nF | capacitance | 0.000000001 | nF, nanofarad, nanofarads | | SI
uF | capacitance | 0.000001 | µF, uF, mfd, mfds, MFD, Mfd, microfarad, microfarads, µfd, ufd, micro farads | | SI
uH | inductance | 0.000001 | µH, uH, microhenry, microhenries, microhenrys | | SI
mH | inductance | 0.001 | mH, millihenry, millihenries, millihenrys | | SI
H | inductance | 1 | H, henry, henries, henrys | | SI
mA.h | charge | 3.6 | mAh, mA·h, mA h, milliamp hours | | SI
A.h | charge | 3600 | Ah, A·h, A h, amp hour, amp hours, ampere hours | | SI
N/mm | spring rate | 1000 | N/mm, newtons/mm, newton/mm, newtons/millimetre | [lbf_av]/[in_i] | SI
N/m | spring rate | 1 | N/m, newtons/metre, newton/metre | | SI
kgf/mm | spring rate | 9806.65 | kgf/mm, kg/mm | N/mm | SP
[lbf_av]/[in_i] | spring rate | 0.45359237*9.80665/0.0254 | lbf/in, lb/in, lbs/in, lb/inch, lbs/inch, pound/inch, pounds/inch, lbf/inch | N/mm | SP
[oz_av].[g]/[in_i] | spring rate | 0.45359237*9.80665/0.0254/16 | ozf/in, oz/in, oz/inch, ounces/inch | N/mm | SP
/[in_i] | thread pitch | 1/0.0254 | tpi, t.p.i., threads/inch, threads/in, thread/inch, threads to the inch, threads an inch, teeth/inch, tpi., TPI, /in, /inch | mm | SP
/cm | thread pitch | 100 | /cm, threads/cm | | SI
% | ratio | 0.01 | %, per cent, percent, % w/v, % v/v, % w/w, % by weight, % by volume, %w/v, %v/v, %w/w | | SI
[ppth] | ratio | 0.001 | ‰, per mil, parts/thousand | | SI
[ppm] | ratio | 0.000001 | ppm, parts/million | | SI
mm/m | ratio | 0.001 | mm/m, mm/metre | | SI
s/d | ratio | 1/86400 | s/day, s/d, sec/day, secs/day, second/day, seconds/day, s a day, sec a day, secs a day, seconds a day | | SI
min/d | ratio | 60/86400 | min/day, min/d, mins/day, minutes/day, minutes a day, min a day | | SI
s/wk | ratio | 1/604800 | s/week, seconds/week, secs/week, seconds a week | | UC
min/wk | ratio | 60/604800 | min/week, mins/week, minutes/week, minutes a week | | UC
[in_i]/[ft_i] | ratio | 1/12 | in/ft, in/foot, inch/foot, inches/foot, inch to the foot, inches to the foot, in to the foot, inch/ft, inches/ft | | SP
[in_i]/[in_i] | ratio | 1 | in/in, in/inch, inch/inch | | SP
[mil_i]/[in_i] | ratio | 0.001 | thou/in, thou/inch, thou to the inch | | SP
[mil_i]/[ft_i] | ratio | 0.001/12 | thou/ft, thou/foot, thou to the foot | | SP
mL/L | ratio | 0.001 | ml/l, mL/L, ml/L, ml/litre, ml to the litre, ml a litre, ml to a litre, cc/litre, cc to the litre, cc/l, cc/L, cc to a litre, millilitres/litre | | SI
[foz_br]/[gal_br] | ratio | 1/160 | fl oz/imp gal, imp fl oz/imp gal | mL/L | WM
[foz_us]/[gal_us] | ratio | 1/128 | fl oz/US gal, US fl oz/US gal | mL/L | HB
mm2/s | viscosity | 0.000001 | cSt, centistoke, centistokes, mm²/s, mm2/s | | SP
{tooth} | count | 1 | teeth, tooth, T | | UC
{thread} | count | 1 | threads, thread | | UC
{coil} | count | 1 | coils, coil, windings | | UC
{link} | count | 1 | links, link | | UC
{spoke} | count | 1 | spokes, spoke | | UC
{off} | count | 1 | off, pcs, pc., pieces, piece, pair, pairs, each, nos, places, of each | | UC
{ball} | count | 1 | balls, ball, rollers, roller | | UC
{hole} | count | 1 | holes, hole, slots, slot | | UC
{click} | count | 1 | clicks, click, notches, notch, divisions, division, steps | | UC
{drop} | count | 1 | drops, drop | | UC
{stroke} | count | 1 | strokes | | UC
{stitch} | count | 1 | stitches, stitch | | UC
{beat} | count | 1 | beats, beat | | UC
{shim} | count | 1 | shims, shim | | UC
{plate} | count | 1 | plates, plate | | UC
`;

/** Units that only an answer leads to. Columns as in the first table. */
export const rareTable = `
mF | capacitance | 0.001 | mF, millifarad, millifarads | | SI
[lbf_av]/[ft_i] | spring rate | 0.45359237*9.80665/0.3048 | lbf/ft | N/m | SP
10*-1.mm | length | 0.0001 | tenths of a millimetre, tenth of a millimetre, tenths of a mm | [mil_i] | TR
10*-1.[in_i] | length | 0.00254 | tenths of an inch, tenth of an inch | mm | TR
`;
