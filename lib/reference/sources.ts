import type { Source } from "./source.ts";

const read = (standard: string, seen: string, doubt?: string): Source => ({
  standard,
  seen,
  how: "read",
  ...(doubt && { doubt }),
});
const computed = (standard: string, seen: string, doubt?: string): Source => ({
  ...read(standard, seen, doubt),
  how: "computed",
});
const memory = (standard: string, doubt?: string): Source => ({
  standard,
  seen: "from memory",
  how: "memory",
  ...(doubt && { doubt }),
});

const hole = "FreeCAD, src/Mod/PartDesign/App/FeatureHole.cpp";
const fasteners = "FreeCAD_FastenersWB, FsData";
const threads = "FusionThreadsGenerator, docs";
const gnuUnits = "GNU units 2.22, definitions.units";
const bolts = "BOLTS, data/bearings.blt";
const isoFits = "isoFits, odchylki.py";
const british = "page britishfasteners.com/threads-ba";
const drillChart = "drill and tap chart, page docslib.org/doc/4942776";
const jaws = "spanner table, page dummett.net (socket_spanner_sizes)";
const boltTables = "secondary tables (boltdepot.com bolt grade chart; Shigley, Table 8-11)";

/** Every source that a table or a formula here names. Standards that are sold were read second-hand, as `seen` says. */
export const sources = {
  // threads
  iso262: read("ISO 262", `${fasteners}/iso262def.csv`),
  iso261: read("ISO 261", hole),
  iso724: computed("ISO 724, ISO 68-1", "d2 = d - 0.649519 P, D1 = d - 1.082532 P"),
  asmeB11: read("ASME B1.1", hole),
  asmeB11formula: computed("ASME B1.1", "basic pitch diameter D - 0.649519/n, minor D - 1.082532/n"),
  bs84: read("BS 84", `${threads}/WHITWORTH_SPEC.md, tables 2 and 3`),
  bs84large: read("BS 84", hole, "BS 84 as read elsewhere has 3 to the inch here"),
  bs84formula: computed("BS 84", "effective D - 0.640327/n, core D - 1.280654/n"),
  bs93: read("BS 93:1951", `${threads}/BA_SPEC.md, section 2`),
  iso228: read("ISO 228-1", `${fasteners}/bspthreaddef.csv`),
  bs811: read(
    "BS 811 (formerly CEI)",
    `${threads}/BSC_SPEC.md`,
    "one second-hand source only; depth and rounding from there",
  ),
  cycleCoarse: read(
    "CEI, a maker's heavier series",
    `${threads}/BSC_SPEC.md`,
    "one source only; it calls the 20 tpi sizes a maker's series, others call them CEI",
  ),
  asmeB1201: read("ASME B1.20.1", hole),
  brass26: memory("Common practice, no source: British brass thread, Whitworth form, 26 tpi at every size"),
  unsMemory: memory("ASME B1.1"),
  confusables: read("BS 84, BS 93, ASME B1.1", `${threads}/BRITISH_THREADING_OVERVIEW.md, 2.3`),

  // holes
  iso2306: read("ISO 2306", hole),
  metricFineHole: computed("common rule for metric threads: diameter less pitch", hole),
  bs1157: read("BS 1157", hole),
  bspHole: read("ISO 228-1 with the usual drills", hole),
  inchTapping: read("drill for about 75 % of full thread", drillChart),
  inchTappingMemory: memory("usual tapping drill, common charts"),
  baTapping: read("usual tapping drills for BA", british),
  bs93drill: read("recommended shop drills for BA", `${threads}/BA_SPEC.md`),
  baTappingMemory: memory("usual tapping drills for BA"),
  nptTapping: memory("usual drills for NPT without a reamer"),
  threadPercent: computed(
    "Machinery's Handbook",
    "(D - drill) / full depth; full depth is 1.299038 P at 60°",
  ),
  iso273: read("ISO 273", hole),
  inchClearance: read("close and free fit for machine screws", drillChart),
  clearanceRule: memory("common practice, no source: body diameter and a little more"),

  // spanners
  whitworthHex: read("BS 190, BS 1083", jaws),
  whitworthHexMemory: memory("BS 190, BS 1083"),
  whitworthPairs: read(
    "BS 190, BS 1083",
    "page liquisearch.com/british_standard_whitworth/comparison_of_standards",
  ),
  baHex: memory("BS 57: across flats 1.75 times the diameter"),
  iso272: read("ISO 272, ISO 4014", `${fasteners}/iso4014head.csv`),
  iso272memory: memory("ISO 272, ISO 4014"),
  din931: read("DIN 931, DIN 934 before 1982", "en.wikipedia.org, Width across flats"),
  asmeB1821: read("ASME B18.2.1", "page machinecalcs.com/wrench-size-chart"),
  asmeB1821memory: memory("ASME B18.2.1, B18.2.2"),
  jawPlay: memory("common practice, no source: up to 0.15 mm or 1.2 % of play counts as a fit"),
  jawList: memory("common practice, no source: the sizes in which spanners are sold"),

  // drills and gauges
  inchDefinition: computed("NIST SP 811, B.8", "1 in = 25.4 mm exactly"),
  asmeB9411: read("ASME B94.11M", gnuUnits),
  drillStep: computed(
    "ISO 235, BS 328",
    "drills are sold by 0.1 mm, up to 3 mm by 0.05 mm",
    "the steps are from memory",
  ),
  fractionStep: computed("ASME B94.11M", "every 1/64 in"),
  b258: computed("ASTM B258", "0.005 in × 92^((36 - n)/39)"),
  bs3737: read("BS 3737 (imperial standard wire gauge)", gnuUnits),
  msg: computed("Manufacturers' Standard Gage", `${gnuUnits}: ounces per square foot over 501.84 lb/ft³`),
  screwGauge: computed("ASME B18.6.1", `${gnuUnits}: 0.060 in + 0.013 in × number`),
  hyperphysics: read(
    "Handbook of Electronic Tables and Formulas (chassis wiring); Floyd (resistance)",
    "hyperphysics.phy-astr.gsu.edu/hbase/Tables/wirega.html",
    "the currents are upper guides in free air, not for fixed wiring",
  ),
  hyperphysicsMemory: memory(
    "Handbook of Electronic Tables and Formulas (chassis wiring)",
    "the currents are upper guides in free air, not for fixed wiring",
  ),
  nec: memory("NFPA 70 (NEC) 240.4(D), copper", "local codes and a licensed electrician decide"),
  copper: computed("IEC 60028", "1/58 Ω mm²/m at 20 °C, 0.00393 per kelvin"),

  // strength
  iso898: read("ISO 898-1", boltTables),
  iso898memory: memory("ISO 898-1"),
  iso898mark: computed("ISO 898-1, clause 5", "first number × 100 MPa; both numbers × 10 MPa"),
  iso3506memory: memory("ISO 3506-1"),
  j429: read("SAE J429", "page web.mst.edu (Shigley and Mischke, 5th ed., p. 341); boltdepot.com"),
  j429memory: memory("SAE J429"),
  stressArea: computed("ISO 898-1", "π/4 (d - 0.9382 P)²"),
  stressAreaInch: computed("ASME B1.1, appendix B", "0.7854 (D - 0.9743/n)²"),
  torque: computed(
    "Shigley, equations 8-27 and 8-31",
    "T = K d F, F = 0.75 of the proof load",
    "real scatter is about 30 %; never for a weak tapped casting",
  ),
  torqueFactors: read(
    "common practice: K for steel in steel",
    "fastener torque chart, page qwf.itemgood.shop/en/jjap",
    "a low-grade page; agrees with what handbooks usually print",
  ),
  faa: read("FAA AC 43.13-1B, table 7-1", "page landseaskyspace.com/ac4313/7-44.html"),
  softCasting: memory("common practice, no source: the tapped metal governs, not the class of the screw"),
  engagement: read(
    "common practice: least engagement",
    "page unanswered.io/guide/how-to-calculate-thread-depth",
    "a rule of thumb",
  ),

  // fits
  iso286it: read("ISO 286-1:2010, table 1", isoFits),
  iso286: read("ISO 286-1:2010, tables 2 to 5", isoFits),
  iso286computed: computed("ISO 286-1:2010", "fundamental deviation, then the tolerance grade"),

  // heat
  cte: read("Callister, Table B.6", "page amesweb.info, linear thermal expansion coefficients of metals"),
  cteMemory: memory("Callister, Table B.6"),
  openStax: read("OpenStax College Physics, Table 13.2", "page jobilize.com"),
  openStaxMemory: memory("OpenStax College Physics, Table 13.2"),
  zincMemory: memory("linear expansion of zinc and its alloys, 23 to 33 millionths"),
  growth: computed("definition of the coefficient", "change = coefficient × length × rise"),

  // bearings
  iso15: read("ISO 15, DIN 625-1", bolts),
  iso15chart: read("ISO 15", "bearing size chart, scribd.com/document/413351629"),
  iso15table: read(
    "ISO 15",
    "a transcription of series 60, 62 and 63 as a Python table in a public repository",
  ),
  iso15memory: memory("ISO 15"),
  iso104: read("ISO 104, DIN 711", bolts),

  // electrics
  iec60063: memory("IEC 60063"),
  iec60062: computed("IEC 60062", "digits, multiplier, tolerance; agrees with resistor-data 1.1.1"),
  ohm: computed("Ohm's law (IEC 60050-131)", "V = I R, P = V I"),

  // engines, mixes, measuring
  geometry: computed("geometry", "π/4 × bore² × stroke; circumference = π × diameter"),
  ringMaker: computed(
    "a piston maker's rule",
    "top gap 0.0045 of the bore, second 1.25 of the top; page supertech.svmdev1.com/piston-and-ring-gap",
  ),
  guidance: memory("common workshop practice, no standard"),
  a967: read("ASTM A967", "page birminghamsprings.co.uk, citric acid passivation"),
  cciNotes: read("CCI Notes 9/5", "lists.collectionsaustralia.net, 2008, can-talk 000804"),
} satisfies Record<string, Source>;
