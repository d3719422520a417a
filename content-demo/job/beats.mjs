/**
 * When things happen in the film, in seconds of the recording's clock. The drawing and the marks both read
 * this page, so that a mark can never drift away from its picture.
 */
export const framesPerSecond = 25;
export const lengthInFrames = 3125;
export const lengthInSeconds = lengthInFrames / framesPerSecond;
export const width = 1280;
export const height = 720;

/** The moment at which each action begins. */
export const beats = {
  float: 4.6,
  witness: 10.0,
  nutsOff: 13.6,
  coverOff: 19.6,
  gasketOff: 26.0,
  impellerNutOff: 32.0,
  impellerOff: 37.2,
  keyOff: 42.0,
  shaftOut: 44.6,
  sealOut: 50.4,
  clean: 57.0,
  measure: 60.6,
  plugOut: 67.0,
  bath: 74.4,
  bathOut: 79.0,
  trial: 83.0,
  plugIn: 88.8,
  sealIn: 95.0,
  shaftIn: 99.2,
  impellerOn: 102.0,
  impellerNutOn: 105.0,
  coverOn: 107.6,
  nutsOn: 110.6,
  nutsTight: 113.2,
  turn: 118.2,
  floatAgain: 120.8,
};

/** The recording of a week later, on its own clock. */
export const laterLengthInFrames = 275;
export const laterLengthInSeconds = laterLengthInFrames / framesPerSecond;
export const laterBeats = {
  plugOut: 1.0,
  plugIn: 5.4,
};

/** The frame that is shown at a moment. */
export function frameOf(seconds) {
  return Math.floor(seconds * framesPerSecond + 1e-6);
}

/** The middle of the interval of the frame that is shown at a moment: what a mark keeps. */
export function middleOf(seconds) {
  return (frameOf(seconds) + 0.5) / framesPerSecond;
}
