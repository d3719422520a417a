import { beats, laterBeats } from "./beats.mjs";

/**
 * The stills: the mark that each shows, the moment of the film it is taken from (null: a photograph, drawn
 * apart), and what it shows, for who cannot see it.
 */
export const stills = [
  {
    of: "desk",
    at: null,
    alt: "Three new parts side by side on paper beside a steel rule: a black lip seal in a steel case, a thin bronze washer, and a paper gasket with four holes.",
  },
  {
    of: "float",
    at: beats.float + 3.4,
    alt: "The pump from the pulley side. A feeler blade stands in the gap between the boss of the pulley and the thrust washer on the neck of the body.",
  },
  {
    of: "witness",
    at: beats.witness + 2.4,
    alt: "The top of the joint between cover and body. The point of a scriber ends a bright line that crosses both edges.",
  },
  {
    of: "nutsOff",
    at: beats.nutsOff + 2.2,
    alt: "The cover of the pump from the front with its four nuts. A spanner is on the upper right nut; an empty tin stands ready in front.",
  },
  {
    of: "coverOff",
    at: beats.coverOff + 2.0,
    alt: "The cover has been drawn forward along its axis, clear of the four studs. The brown gasket is still on the face of the body, the impeller behind it. The nuts lie in a tin.",
  },
  {
    of: "gasketOff",
    at: beats.gasketOff + 3.35,
    alt: "The wet, dark gasket is more than half peeled from the face of the body and curls forward off the studs. A labelled bag stands open behind.",
  },
  {
    of: "impellerNutOff",
    at: beats.impellerNutOff + 1.6,
    alt: "A ring spanner on the impeller nut in the middle of the impeller. The corners of the nut carry a groove.",
  },
  {
    of: "impellerOff",
    at: beats.impellerOff + 2.6,
    alt: "Two long screws stand in the impeller's tapped holes. The impeller has come forward along the shaft, half out of the body.",
  },
  {
    of: "keyOff",
    at: beats.keyOff + 1.2,
    alt: "The half-moon key lies above its slot in the end of the shaft, lifted straight up.",
  },
  {
    of: "shaftOut",
    at: beats.shaftOut + 1.8,
    alt: "Shaft and pulley are drawn out of the body at the pulley end, with the thrust washer loose on the shaft.",
  },
  {
    of: "sealOut",
    at: beats.sealOut + 1.8,
    alt: "Section through the body. The hook has caught the rim of the old seal and tilts it out of its bore.",
  },
  {
    of: "clean",
    at: beats.clean + 1.4,
    alt: "Section through the body. A white cloth wound on a wooden rod is turned in the empty seal bore.",
  },
  {
    of: "measure",
    at: beats.measure + 1.8,
    alt: "The shaft lies across two wooden blocks. A micrometer closes on it at the bright band where the seal ran.",
  },
  {
    of: "washer-thickness",
    at: beats.measure + 5.0,
    alt: "The thin bronze thrust washer is held edge on between the faces of the micrometer, whose bow stands in a wooden block.",
  },
  {
    of: "plugOut",
    at: beats.plugOut + 4.3,
    alt: "The cover lies on the bench, its neck up. The drain plug and the steel washer lie in front of it; the brown fibre washer still lies on the boss.",
  },
  {
    of: "bath",
    at: beats.bath + 1.3,
    alt: "The cover, without its drain plug, is let down into a round tub of pale green liquid.",
  },
  {
    of: "bathOut",
    at: beats.bathOut + 1.9,
    alt: "The cover hangs over the tub and drips.",
  },
  {
    of: "trial",
    at: beats.trial + 2.1,
    alt: "The body with its four studs. A pale gasket is held against the ends of the studs: its holes lie further out than they do.",
  },
  {
    of: "plugIn",
    at: beats.plugIn + 3.4,
    alt: "The drain plug is screwed into the cover; the steel washer lies under its head, the brown fibre washer below.",
  },
  {
    of: "sealIn",
    at: beats.sealIn + 2.0,
    alt: "Section through the body. A stepped mandrel, its pilot in the bush, pushes the new seal into its bore; the spring side faces the mandrel.",
  },
  {
    of: "shaftIn",
    at: beats.shaftIn + 1.4,
    alt: "Shaft and pulley on their way into the body from the pulley end, the new thrust washer against the boss of the pulley.",
  },
  {
    of: "impellerOn",
    at: beats.impellerOn + 1.6,
    alt: "The impeller is slid along the shaft towards the key, with its curved vanes on the near side.",
  },
  {
    of: "impellerNutOn",
    at: beats.impellerNutOn + 1.4,
    alt: "The torque wrench with its socket on the impeller nut, its beam, scale and red grip off to the right.",
  },
  {
    of: "coverOn",
    at: beats.coverOn + 1.6,
    alt: "The new pale gasket hangs on the four studs. The cover approaches along its axis, with the halves of the witness mark in line on top.",
  },
  {
    of: "nutsOn",
    at: beats.nutsOn + 2.35,
    alt: "The cover is home, and all four nuts have been run on to their studs by hand. The tin is empty.",
  },
  {
    of: "nutsTight",
    at: beats.nutsTight + 0.98,
    alt: "The torque wrench on the lower right cover nut, diagonally across from the nut tightened before.",
  },
  {
    of: "turn",
    at: beats.turn + 1.2,
    alt: "The whole pump from the pulley side. The pulley has been turned part of a turn, its spokes aslant.",
  },
  {
    of: "floatAgain",
    at: beats.floatAgain + 2.0,
    alt: "The feeler blade again between the boss of the pulley and the new thrust washer.",
  },
  {
    of: "laterOut",
    at: laterBeats.plugOut + 3.0,
    later: true,
    alt: "The pump from the cover's side. Drain plug and steel washer lie on the bench beside a new red fibre washer; the old brown one is still at the drain.",
  },
  {
    of: "laterIn",
    at: laterBeats.plugIn + 2.6,
    later: true,
    alt: "The plug goes back into the drain with the red fibre washer and the steel washer. The old brown one lies on the bench.",
  },
];
