import { type Relation, role, roleBut } from "../relation.ts";

const any = /^/;
const focal = /\bfocal(?: length)?\b|\bf ?=/;
const eyepiece = /\b(?:eye-?piece|ocular)\b/;
const objective = /\b(?:objective|object glass|o\.?g|mirror|aperture|clear)\b/;
const aDay = 86_400;

/** Lenses, films, clocks, looms, machines that sew and write. */
export const trades: readonly Relation[] = [
  {
    says: "An f-number is the focal length by the opening",
    result: role(/\bf\/|\bf[- ]?number\b|\bfocal ratio\b/, "number"),
    given: [
      role(focal, "length"),
      roleBut(
        /\b(?:aperture|pupil|opening|objective|object glass|mirror|stop|diaphragm|clear)\b/,
        focal,
        "length",
      ),
    ],
    of: (length, opening) => length / opening,
    room: 0.06,
    source: "ISO 517 (from memory)",
    examples: [
      {
        entry: {
          text: "f/5.6",
          what: "maximum aperture worked out",
          context: {
            related: [
              { what: "focal length", text: "135 mm" },
              { what: "entrance pupil", text: "24.1 mm" },
            ],
          },
        },
        wrong: "f/8",
      },
    ],
  },
  {
    says: "A telescope magnifies by the focal length of its objective over that of its eyepiece",
    result: role(/\b(?:power|magnif\w+|diameters)\b|\bx$/, "number", "ratio"),
    given: [
      roleBut(
        /\bfocal\b|\bobjective\b|\btelescope\b|\bmirror\b/,
        /\beye-?piece|ocular|clear|aperture|diameter\b/,
        "length",
      ),
      role(eyepiece, "length"),
    ],
    of: (far, close) => far / close,
    not: /\bmicroscope\b/,
    room: 0.04,
    source: "geometrical optics",
    examples: [
      {
        entry: {
          text: "40 diameters",
          what: "magnifying power",
          context: {
            related: [
              { what: "objective focal length", text: "1,000 mm" },
              { what: "eyepiece", text: "25 mm" },
            ],
          },
        },
        wrong: "25 diameters",
      },
    ],
  },
  {
    says: "A microscope magnifies by its objective times its eyepiece",
    result: roleBut(/\b(?:power|magnif\w+|total|diameters)\b/, /\bobjective|eye-?piece|ocular\b/, "number"),
    given: [role(/\bobjective\b/, "number"), role(eyepiece, "number")],
    of: (one, other) => one * other,
    only: /\bmicroscope\b/,
    not: /\btube factor\b/,
    room: 0.03,
    examples: [
      {
        entry: {
          text: "400",
          what: "total magnification",
          context: {
            part: "microscope",
            related: [
              { what: "objective", text: "40" },
              { what: "eyepiece", text: "10" },
            ],
          },
        },
        wrong: "50",
      },
    ],
  },
  {
    says: "An exit pupil is the objective by the power",
    result: role(/\bexit pupil\b|\bramsden\b/, "length"),
    given: [role(objective, "length"), role(/\b(?:power|magnif\w+)\b/, "number", "ratio")],
    of: (opening, times) => opening / times,
    room: 0.04,
    source: "geometrical optics",
    examples: [
      {
        entry: {
          text: "5 mm",
          what: "exit pupil",
          context: {
            related: [
              { what: "objective", text: "50 mm" },
              { what: "power", text: "10" },
            ],
          },
        },
        wrong: "0.5 mm",
      },
    ],
  },
  {
    says: "A lens of one dioptre has a focal length of one metre",
    result: role(/\bdiopt\w+\b/, "number"),
    given: [role(focal, "length")],
    of: (length) => 1 / length,
    unsigned: true,
    room: 0.03,
    source: "ISO 13666 (from memory)",
    examples: [
      {
        entry: {
          text: "4 dioptres",
          what: "close-up lens",
          context: { related: [{ what: "focal length", text: "250 mm" }] },
        },
        wrong: "2.5 dioptres",
      },
    ],
  },
  {
    says: "The frames of a foot have twelve inches between them",
    result: role(/\b(?:perforation|frame|pull-?down)\b|\bpitch\b/, "length"),
    given: [role(/\bframes? (?:to|in|per|a) (?:the |a )?(?:foot|ft)\b|\bframes a foot\b/, "number", "count")],
    of: (frames) => 0.3048 / frames,
    room: 0.01,
    source: "ISO 69 for film of 16 mm (from memory)",
    examples: [
      {
        entry: {
          text: "40 frames to the foot",
          what: "perforation count",
          context: { related: [{ what: "perforation pitch", text: "7.62 mm" }] },
        },
        wrong: "16 frames to the foot",
      },
    ],
  },
  {
    says: "A pitch is an inch by what stands in it",
    result: roleBut(
      /\b(?:step|pitch|spacing|apart|escapement|advance|every (?:character|letter)|per (?:character|letter)|carriage moves)\b/,
      /\b(?:per|to the|an) inch\b|\bpitch (?:circle|dia\w*)\b/,
      "length",
    ),
    given: [
      roleBut(
        /\b[a-z]+ (?:per|to the|to an|in an|an) inch\b|\bcpi\b/,
        /\b(?:threads|points|pitch) (?:per|to the) inch\b/,
        "number",
        "count",
      ),
    ],
    of: (count) => 0.0254 / count,
    room: 0.02,
    examples: [
      {
        entry: {
          text: "2.54 mm",
          what: "escapement step",
          context: { part: "typewriter", spec: "10 characters per inch" },
        },
        wrong: "25.4 mm",
      },
      {
        entry: {
          text: "2.12 mm",
          what: "needle pitch",
          context: { part: "knitting machine", spec: "12 needles to the inch" },
        },
        wrong: "21.2 mm",
      },
    ],
  },
  {
    says: "An octave is twice the frequency",
    result: roleBut(
      /\b(?:lowest|bottom|top|highest|low|high|octaves? (?:up|down|above|below))\b/,
      /\bmiddle\b/,
      "frequency",
    ),
    given: [
      roleBut(
        /\b(?:middle|fork|reference|standard|concert|a4|c4)\b/,
        /\b(?:lowest|bottom|highest)\b/,
        "frequency",
      ),
      role(/\boctaves?\b/, "number", "count"),
    ],
    of: (known, octaves) => [known / 2 ** octaves, known * 2 ** octaves],
    room: 0.03,
    source: "acoustics: an octave is the ratio 2:1",
    examples: [
      {
        entry: {
          text: "27.5 Hz",
          what: "lowest A",
          context: {
            related: [
              { what: "A above middle C", text: "440 Hz" },
              { what: "octaves between them", text: "4" },
            ],
          },
        },
        wrong: "275 Hz",
      },
    ],
  },
  {
    says: "An open pipe is half as long as its wave",
    result: roleBut(
      /\b(?:length|pipe|body|speaking)\b/,
      /\b(?:scale|mouth|cut-?up|foot|toe|diameter|width)\b/,
      "length",
    ),
    given: [role(any, "frequency")],
    of: (frequency) => 340 / (2 * frequency),
    only: /\b(?:organ|diapason|principal|flue|flute|open pipe)\b/,
    not: /\b(?:stopped|gedackt|bourdon|reed|trumpet|wind|blower|motor|mains)\b/,
    room: 0.18,
    source: "340 m/s in air at 15 °C; the mouth and the open end take a little of the length",
    examples: [
      {
        entry: {
          text: "8 ft",
          what: "speaking length of bottom C",
          context: { part: "open diapason pipe", related: [{ what: "pitch sounded", text: "65 Hz" }] },
        },
        wrong: "4 ft",
      },
    ],
  },
  {
    says: "A stitch is an inch by the stitches in it",
    result: roleBut(/\bstitch(?:es)?\b/, /\bper inch|to the inch|an inch\b/, "length"),
    given: [role(/\bstitch(?:es)? (?:per|to the|to an|in an|an) inch\b|\bspi\b/, "number", "count")],
    of: (count) => 0.0254 / count,
    room: 0.04,
    examples: [
      {
        entry: {
          text: "3.2 mm",
          what: "stitch length",
          context: { related: [{ what: "stitch count", text: "8 stitches per inch" }] },
        },
        wrong: "2.1 mm",
      },
    ],
  },
  {
    says: "The ends of a warp are those of an inch by its width",
    result: roleBut(
      /\b(?:ends|threads|dents|picks|total)\b/,
      /\b(?:per|to the|an|in an) inch\b|\bepi\b|\bthreads? per\b/,
      "number",
      "count",
    ),
    given: [
      role(/\b(?:ends|threads|dents|picks) (?:per|to the|to an|in an|an) inch\b|\bepi\b/, "number", "count"),
      role(/\b(?:width|wide|in the reed|length|long)\b/, "length"),
    ],
    of: (count, width) => (count * width) / 0.0254,
    only: /\b(?:loom|reed|warp|weav\w+|cloth|heddle|heald)\b/,
    room: 0.03,
    examples: [
      {
        entry: {
          text: "960 ends",
          what: "ends in the warp",
          context: {
            part: "loom",
            related: [
              { what: "reed", text: "24 ends per inch" },
              { what: "width in the reed", text: "40 in" },
            ],
          },
        },
        wrong: "690 ends",
      },
    ],
  },
  {
    says: "A thread's lead is its pitch by its starts",
    result: roleBut(/\blead\b/, /\bleadscrew\b(?!.*\blead\b(?!screw))/, "length"),
    given: [role(/\bpitch\b/, "length"), role(/\bstarts?\b/, "number", "count")],
    of: (pitch, starts) => pitch * starts,
    room: 0.01,
    examples: [
      {
        entry: {
          text: "12 mm",
          what: "lead of the worm",
          context: {
            related: [
              { what: "pitch", text: "4 mm" },
              { what: "starts", text: "3" },
            ],
          },
        },
        wrong: "1.33 mm",
      },
    ],
  },
  {
    says: "The swing over a bed is twice the height of its centres",
    result: role(/\bswing\b/, "length"),
    given: [role(/\bcentre height\b|\bheight of (?:the )?centres\b/, "length")],
    of: (height) => 2 * height,
    not: /\b(?:gap|cross-?slide|saddle|carriage)\b/,
    room: 0.04,
    examples: [
      {
        entry: {
          text: "7 in",
          what: "swing over the bed",
          context: { related: [{ what: "centre height", text: "3-1/2 in" }] },
        },
        wrong: "3-1/2 in",
      },
    ],
  },
  {
    says: "A pendulum's length is g by the square of its time over 2π",
    result: role(/\bpendulum\b/, "length"),
    given: [role(/\bperiod\b|\bthere and back\b|\bto and fro\b|\bcomplete swing\b/, "time")],
    of: (period) => 9.80665 * (period / (2 * Math.PI)) ** 2,
    not: /\b(?:torsion|compound|metronome|anniversary)\b/,
    room: 0.03,
    source: "T = 2π √(L/g), g = 9.80665 m/s² (ISO 80000-3)",
    examples: [
      {
        entry: {
          text: "994 mm",
          what: "pendulum length",
          context: { related: [{ what: "period", text: "2 s" }] },
        },
        wrong: "248 mm",
      },
    ],
  },
  {
    says: "A pendulum's length is g by the square of a beat over π",
    result: role(/\bpendulum\b/, "length"),
    given: [role(/\bbeats?\b|\btrain\b|\bpendulum\b/, "frequency")],
    of: (beats) => 9.80665 / (Math.PI * beats) ** 2,
    not: /\b(?:torsion|compound|metronome|anniversary|vibrations)\b/,
    room: 0.03,
    source: "T = 2π √(L/g), g = 9.80665 m/s² (ISO 80000-3)",
    examples: [
      {
        entry: {
          text: "248 mm",
          what: "pendulum length",
          context: { related: [{ what: "train", text: "7,200 beats an hour" }] },
        },
        wrong: "994 mm",
      },
    ],
  },
  {
    says: "A rate is what was gained or lost in all by the days",
    result: role(/\brate\b|\b(?:gain|los)\w*\b/, "ratio"),
    given: [
      role(/\b(?:total|in all|slow|fast|gained|lost|behind|ahead|difference|error)\b/, "time"),
      roleBut(
        /\b(?:watched|over|for|days?|test|period|run)\b/,
        /\b(?:total|slow|fast|gained|lost)\b/,
        "time",
      ),
    ],
    of: (off, time) => [off / time, -off / time],
    room: 0.05,
    only: /\b(?:clock|watch|chronometer|timepiece|regulator|rate)\b/,
    examples: [
      {
        entry: {
          text: "3 s/day",
          what: "rate of the clock",
          context: {
            related: [
              { what: "watched for", text: "7 days" },
              { what: "total slow", text: "21 s" },
            ],
          },
        },
        wrong: "7 s/day",
      },
    ],
  },
  {
    says: "A clock's weight falls in all what it falls in a day by the days",
    result: roleBut(
      /\b(?:total|in all|whole|drop|fall|falls)\b/,
      /\b(?:a|per|each) day\b|\bdaily\b/,
      "length",
    ),
    given: [
      role(/\b(?:a|per|each|one) day\b|\bdaily\b/, "length"),
      role(/\b(?:days?|going|duration|runs)\b/, "time"),
    ],
    of: (fall, time) => (fall * time) / aDay,
    only: /\bweight\b/,
    room: 0.04,
    examples: [
      {
        entry: {
          text: "1,400 mm",
          what: "fall of the weight in all",
          context: {
            related: [
              { what: "fall a day", text: "175 mm" },
              { what: "going", text: "8 days" },
            ],
          },
        },
        wrong: "1,040 mm",
      },
    ],
  },
  {
    says: "A flow is the volume by the time",
    result: role(any, "volume flow"),
    given: [role(any, "volume"), role(any, "time")],
    of: (volume, time) => volume / time,
    not: /\bstroke\b/,
    room: 0.04,
    examples: [
      {
        entry: {
          text: "1.5 l/h",
          what: "fuel used",
          context: {
            related: [
              { what: "fuel", text: "3 l" },
              { what: "run", text: "2 h" },
            ],
          },
        },
        wrong: "6 l/h",
      },
      {
        entry: {
          text: "12 l/min",
          what: "delivery of the pump",
          context: {
            related: [
              { what: "bucket", text: "9 l" },
              { what: "filled in", text: "45 s" },
            ],
          },
        },
        wrong: "5 l/min",
      },
    ],
  },
  {
    says: "A pump gives what its stroke displaces by the strokes",
    result: role(any, "volume flow"),
    given: [
      role(/\b(?:per|a|each) (?:stroke|turn|rev\w*)\b|\bdisplacement\b/, "volume"),
      role(any, "rotational speed", "frequency"),
    ],
    of: (volume, speed) => volume * speed,
    not: /\b(?:volumetric|double[- ]acting|cylinders)\b/,
    room: 0.12,
    examples: [
      {
        entry: {
          text: "25 l/min",
          what: "delivery",
          context: {
            related: [
              { what: "displacement per rev", text: "25 ml" },
              { what: "speed", text: "1,000 rpm" },
            ],
          },
        },
        wrong: "2.5 l/min",
      },
    ],
  },
];
