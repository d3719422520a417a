/**
 * What a machine is made of: the last word of a part's name ("worm wheel", "pressure bar spring"), in the singular,
 * sorted by where it is met. A word that some trade uses for a part belongs here; the name before it needs no listing.
 */
const fasteners =
  "screw bolt nut washer stud pin clip circlip rivet key cotter split grubscrew setscrew locknut dowel spacer shim collar insert gib clamp peg hook staple nail tack lug bracket strap buckle ferrule lockwasher roll e-clip";
const turning =
  "shaft spindle axle arbor bush bushing bearing race ball roller cone cup hub wheel gear pinion worm rack sprocket cog chain belt pulley flywheel crank crankshaft camshaft cam eccentric clutch pawl ratchet ring sleeve journal pivot coupling coupler joint universal drum quill chuck collet mandrel countershaft jackshaft trunnion planet carrier shell";
const sliding =
  "slide saddle apron gib strip nut leadscrew tailstock headstock carriage platen bed table ram cylinder piston liner barrel bore rod conrod crosshead valve tappet pushrod rocker guide seat seating stem plunger gland packing stuffing diaphragm leather bucket clack flap disc vane impeller rotor stator";
const sealing =
  "seal gasket o-ring oring grommet felt wick oiler cork joint boot bellows gaiter packing wiper tube tubing pipe hose union elbow tee nipple strainer filter screen tank hopper reservoir sump pan";
const covers =
  "cover cap plate panel guard lid case casing cabinet frame chassis base foot door bezel glass dial hand face knob handle lever pedal treadle button badge plug housing body head block plinth bonnet cowl shield shroud hood grille box bracket stand yoke arm fork spar handlebar saddle stem mudguard rim spoke tyre tire tread wheel nameplate transfer";
const springs =
  "spring mainspring suspension torsion detent latch catch trigger sear stop bumper buffer weight counterweight governor damper brake shoe lining pad band cable wire cord line rope string link linkage toggle bellcrank";
const clocks =
  "escapement pallet verge anchor fusee click clickspring barrel snail hammer bell gong pendulum bob crutch chime strike movement balance staff hairspring fork jewel train motion cannon hourwheel";
const electrical =
  "capacitor cap condenser resistor transformer coil valve tube rectifier diode transistor fuse switch socket plug lead flex lamp bulb bulbholder brush commutator armature winding motor magnet magneto points contact contactor relay solenoid thermostat element heater potentiometer pot speaker antenna aerial slug trimmer choke battery terminal connector starter ignitor igniter injector nozzle sparkplug";
const printing =
  "roller truck tympan gripper bail chase quoin form forme disk inkdisk throwoff typebar slug typeslug segment ribbon vibrator scale feed feeder spool bobbin shuttle hook needle looper dog foot presser tension tensioner thread take-up plate looptaker";
const water =
  "pump impeller prop propeller skeg cup gearcase anode leathers bucket spout delivery foot relief injector boiler burner jet cock tap faucet bib gauge float";
const various =
  "crystal lens shutter mirror prism bellows reed bow stylus cartridge tonearm platter idler turntable headshell capstan reel portafilter burr burrs blade basket pressurestat toggle rocker keyboard carriage drawband mainshaft layshaft gearbox handwheel flange manifold stack spigot breech pan treadle pitman heddle needlebar faceplate throatplate slideplate bobbincase boss hinge latch hasp hopper auger chute vise jaw anvil arbor spindle toolpost compound crossslide steady mandrel backplate faceplate kickstand chainwheel chainring freewheel derailleur shifter headset hanger dropout tube frame";
const common = "tag control part assembly unit mechanism linkage mount mounting pivot bit half";

/** Words that are parts, in the singular. */
export const partHeads = new Set(
  [
    fasteners,
    turning,
    sliding,
    sealing,
    covers,
    springs,
    clocks,
    electrical,
    printing,
    water,
    various,
    common,
  ]
    .join(" ")
    .split(" ")
    .filter(
      (word) => !["bit", "half", "split", "train", "motion", "hand", "form", "thread", "face"].includes(word),
    ),
);
/** Parts whose names are other words as well; they count in company ("minute hand", "spring hook"). */
export const shyHeads = new Set(
  "hand face scale feed strike stop line link form head case base body bed foot glass dial arm frame stand box button weight lead tap cap cover block bell lamp cock float jet unit part bit line tension universal table pan bore seat".split(
    " ",
  ),
);

/** Words of one piece that recognisers write in two, so that they are not read as "half" and "nut". */
export const partsInTwoWords = new Set([
  "half nut",
  "half nuts",
  "half moon",
  "half round",
  "half link",
  "half shaft",
]);

/** Words before a part that say nothing of which part it is; they are left out of its name. */
export const plainAdjectives = new Set(
  "new old little big small tiny great proper nice good bad wrong same other another own actual fresh original spare existing rusty worn broken bent cracked whole only decent cheap modern brand stock existing few couple pair set bunch lot bit first next last horrible lovely poor standard blank nasty fine single".split(
    " ",
  ),
);

/** Words behind "the" that are no parts, where no part of the list is named. */
export const notParts = new Set(
  "tolerance length width height depth diameter gap clearance temperature voltage current pressure speed timing tension size weight number numbers book manual plate order trick problem trouble job work shop shed bench table vice vise video camera film light reason answer question point idea rule money price post comments underneath inside outside middle top bottom left right front back end ends side sides edge paint rust dirt muck oil grease water paper tape weekend wife neighbour neighbor chap guy bloke man lady world minute moment meantime".split(
    " ",
  ),
);
