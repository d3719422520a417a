/** What the restorer says: start in seconds, end, words. Becomes the captions of the recording. */
export const speech = [
  [0.4, 2.4, "Right, this is the water pump off the Type B."],
  [2.4, 4.5, "It weeps at the seal, so it is coming apart."],
  [4.6, 7.0, "Before I touch a nut I want the end float."],
  [7.0, 9.7, "Feeler in at the pulley: about fifteen thou. The card says twelve at most when new."],
  [10.0, 13.2, "One witness mark across the cover and the body, so that it goes back as it was."],
  [13.6, 16.4, "Four nuts, quarter BSF. Half a turn each, in a cross,"],
  [16.4, 19.2, "then all the way off and into the tin."],
  [19.6, 22.6, "And the cover draws straight off its studs."],
  [22.9, 25.8, "Now, an old gasket like that may well have asbestos in it."],
  [26.0, 28.6, "So it gets wetted right through, and it stays wet."],
  [28.6, 31.5, "Then peel it off in one piece, and into the bag."],
  [32.0, 34.2, "This nut has a groove round it. That means left hand:"],
  [34.2, 35.6, "it undoes clockwise."],
  [35.7, 37.1, "Don't lever behind the impeller, the vanes snap."],
  [37.2, 39.4, "Two jacking screws in the tapped holes,"],
  [39.4, 41.7, "half a turn each, and off it comes."],
  [42.0, 44.2, "Key out of its slot, before it gets lost."],
  [44.6, 48.0, "Shaft and pulley out to the left, and the thrust washer comes with them."],
  [48.4, 50.2, "Glasses on for this one, the hook can slip."],
  [50.4, 53.7, "Hook under the old seal, a bit on each side, and out it pops."],
  [54.0, 56.8, "White spirit on a cloth, door open. No air line in that bore, please."],
  [57.0, 59.9, "Wipe the bore out, and the same for the shaft."],
  [60.6, 63.5, "Micrometer on the seal track: point four nine eight two. That will do."],
  [63.8, 66.6, "The old thrust washer is fifty-nine and a half thou, so it has lost three."],
  [67.0, 69.2, "New seal, lip towards the impeller, a smear of grease on it,"],
  [69.2, 71.0, "and press it in until it sits on the shoulder."],
  [71.2, 73.8, "New thrust washer against the pulley, and slide the shaft in."],
  [74.0, 76.8, "Key in, impeller on, vanes towards the cover."],
  [77.0, 79.4, "Left-hand nut, so anticlockwise, twelve foot pounds."],
  [79.6, 82.3, "New gasket, then the cover, witness mark in line."],
  [82.6, 84.9, "Nuts on finger-tight only, for now."],
  [85.2, 88.9, "Gasket is sitting flat, so now in a cross: two foot pounds, then five."],
  [89.0, 90.2, "Belt stays off for this."],
  [90.2, 92.5, "One turn by hand. Free all the way round."],
  [92.8, 96.4, "And the feeler again: twelve thou. That is the fifteen less the three. Done."],
];

/** The captions as a WebVTT file. */
export function webvtt() {
  const cues = speech.map(([from, to, words]) => `${stamp(from)} --> ${stamp(to)}\n${words}\n`);
  return `WEBVTT\n\n${cues.join("\n")}`;
}

function stamp(seconds) {
  const thousandths = Math.round(seconds * 1000);
  const two = (number) => String(number).padStart(2, "0");
  const minutes = Math.floor(thousandths / 60_000);
  const rest = thousandths - minutes * 60_000;
  return `00:${two(minutes)}:${two(Math.floor(rest / 1000))}.${String(rest % 1000).padStart(3, "0")}`;
}
