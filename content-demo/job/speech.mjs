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
  [67.0, 69.3, "Now the cover. Drain plug out, quarter BSF, brass,"],
  [69.4, 72.0, "and mind the order: steel washer under the head,"],
  [72.0, 74.2, "fibre washer against the cover. Both into tin one."],
  [74.4, 76.4, "Goggles on, and the cover into the citric acid bath."],
  [76.4, 78.8, "Two hours at least, and no more than twelve."],
  [79.0, 82.4, "Four hours later: out it comes, rinse it and dry it."],
  [83.0, 85.6, "The kit came with a cover gasket. Try it dry on the studs."],
  [85.6, 88.6, "No. Its holes are on a bigger circle. The one I cut it is."],
  [88.8, 91.0, "The kit has no fibre washer either, so the old one goes back for now,"],
  [91.0, 94.6, "fibre, steel, plug. It gets a new one when it comes."],
  [95.0, 97.2, "New seal, lip towards the impeller, a smear of grease on it,"],
  [97.2, 99.0, "and press it in until it sits on the shoulder."],
  [99.2, 101.8, "New thrust washer against the pulley, and slide the shaft in."],
  [102.0, 104.8, "Key in, impeller on, vanes towards the cover."],
  [105.0, 107.4, "Left-hand nut, so anticlockwise, twelve foot pounds."],
  [107.6, 110.3, "New gasket, then the cover, witness mark in line."],
  [110.6, 112.9, "Nuts on finger-tight only, for now."],
  [113.2, 116.9, "Gasket is sitting flat, so now in a cross: two foot pounds, then five."],
  [117.0, 118.2, "Belt stays off for this."],
  [118.2, 120.5, "One turn by hand. Free all the way round."],
  [120.8, 124.4, "And the feeler again: twelve thou. That is the fifteen less the three. Done."],
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
