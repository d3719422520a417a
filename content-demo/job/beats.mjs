/**
 * When things happen in the film, in seconds of the recording's clock. The drawing and the marks both read
 * this page, so that a mark can never drift away from its picture.
 */
export const framesPerSecond = 25;
export const lengthInFrames = 2425;
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
  sealIn: 67.0,
  shaftIn: 71.2,
  impellerOn: 74.0,
  impellerNutOn: 77.0,
  coverOn: 79.6,
  nutsOn: 82.6,
  nutsTight: 85.2,
  turn: 90.2,
  floatAgain: 92.8,
};

/** The frame that is shown at a moment. */
export function frameOf(seconds) {
  return Math.floor(seconds * framesPerSecond + 1e-6);
}

/** The middle of the interval of the frame that is shown at a moment: what a mark keeps. */
export function middleOf(seconds) {
  return (frameOf(seconds) + 0.5) / framesPerSecond;
}
