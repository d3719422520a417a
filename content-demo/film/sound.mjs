import { beats, laterBeats, laterLengthInSeconds, lengthInSeconds } from "../job/beats.mjs";

/** The sounds of the bench, made up: a quiet room, and small noises where metal, wood or water move. No speech. */
export const samplesPerSecond = 44_100;

/** Random numbers that are the same each time (a linear congruential generator; constants after Knuth). */
function randomNumbers(seed) {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 31 - 1;
  };
}

/** A struck thing: partials in hertz that die away, each in its own time. */
function strike(partials, decay) {
  return (t) => {
    let sum = 0;
    for (const [hertz, loud] of partials)
      sum += loud * Math.sin(2 * Math.PI * hertz * t) * Math.exp((-t * hertz) / decay);
    return sum * Math.min(1, t * 2000);
  };
}

const voices = {
  nut: {
    length: 0.25,
    sound: strike(
      [
        [2310, 0.5],
        [3470, 0.3],
        [5120, 0.2],
      ],
      90,
    ),
  },
  clink: {
    length: 0.5,
    sound: strike(
      [
        [1740, 0.5],
        [2930, 0.35],
        [4410, 0.25],
      ],
      160,
    ),
  },
  knock: {
    length: 0.35,
    sound: strike(
      [
        [138, 0.8],
        [262, 0.4],
        [510, 0.12],
      ],
      14,
    ),
  },
  ratchet: {
    length: 0.05,
    sound: strike(
      [
        [3200, 0.5],
        [4700, 0.3],
      ],
      30,
    ),
  },
  drip: {
    length: 0.18,
    sound: (t) => Math.sin(2 * Math.PI * (820 + 2600 * t) * t) * Math.exp(-t * 34) * Math.min(1, t * 400),
  },
};

/** A list of events, second, voice, loudness from 0 to 1, and the pens that write into it. */
function score() {
  const list = [];
  const at = (second, voice, loud) => list.push([second, voice, loud]);
  const series = (from, count, step, voice, loud) => {
    for (let i = 0; i < count; i++) at(from + i * step, voice, loud * (i % 3 === 1 ? 0.7 : 1));
  };
  const drainOut = (t) => {
    at(t + 0.4, "nut", 0.28);
    series(t + 1.25, 5, 0.17, "ratchet", 0.14);
    at(t + 2.0, "clink", 0.34);
    at(t + 4.0, "clink", 0.2);
  };
  const drainIn = (t) => {
    at(t + 2.0, "clink", 0.18);
    series(t + 3.05, 5, 0.17, "ratchet", 0.14);
    at(t + 4.7, "nut", 0.26);
  };
  return { list, at, series, drainOut, drainIn };
}

function events() {
  const { list, at, series, drainOut, drainIn } = score();
  at(beats.float + 2.2, "clink", 0.12);
  [0, 1, 2, 3].forEach((i) => {
    at(beats.nutsOff + 0.4 + i * 0.7, "nut", 0.3);
    series(beats.nutsOff + 3.15 + i * 0.38, 4, 0.16, "ratchet", 0.14);
    at(beats.nutsOff + 4.95 + i * 0.38, "clink", 0.42);
    at(beats.nutsOn + 0.85 + i * 0.28, "nut", 0.2);
    series(beats.nutsOn + 0.9 + i * 0.28, 3, 0.17, "ratchet", 0.12);
  });
  at(beats.coverOff + 3.1, "knock", 0.5);
  for (let i = 0; i < 7; i++) at(beats.gasketOff + 0.25 + i * 0.2, "drip", 0.16);
  at(beats.impellerNutOff + 0.65, "nut", 0.3);
  at(beats.impellerNutOff + 4.0, "clink", 0.4);
  series(beats.impellerOff + 0.7, 13, 0.19, "ratchet", 0.18);
  at(beats.impellerOff + 4.5, "knock", 0.4);
  at(beats.keyOff + 0.6, "nut", 0.34);
  at(beats.shaftOut + 0.4, "knock", 0.2);
  at(beats.sealOut + 1.0, "nut", 0.2);
  at(beats.sealOut + 2.3, "knock", 0.4);
  series(beats.measure + 1.0, 6, 0.12, "ratchet", 0.3);
  series(beats.measure + 4.1, 6, 0.12, "ratchet", 0.3);
  drainOut(beats.plugOut);
  at(beats.bath + 1.4, "drip", 0.3);
  at(beats.bath + 2.5, "knock", 0.16);
  for (let i = 0; i < 9; i++) at(beats.bathOut + 1.4 + i * 0.19, "drip", 0.16);
  for (const after of [1.5, 2.1, 2.8]) at(beats.trial + after, "knock", 0.12);
  drainIn(beats.plugIn);
  at(beats.sealIn + 1.4, "knock", 0.25);
  at(beats.sealIn + 3.0, "knock", 0.45);
  at(beats.shaftIn + 2.1, "clink", 0.24);
  at(beats.impellerOn + 0.8, "nut", 0.26);
  at(beats.impellerOn + 2.5, "knock", 0.34);
  series(beats.impellerNutOn + 0.1, 4, 0.15, "ratchet", 0.14);
  at(beats.coverOn + 2.4, "knock", 0.4);
  for (let i = 0; i < 4; i++) {
    at(beats.nutsTight + 0.5 + i * 0.4, "nut", 0.22);
    at(beats.nutsTight + 2.15 + i * 0.4, "nut", 0.22);
  }
  at(beats.floatAgain + 1.9, "clink", 0.12);
  return list;
}

function laterEvents() {
  const { list, drainOut, drainIn } = score();
  drainOut(laterBeats.plugOut - 0.8);
  drainIn(laterBeats.plugIn);
  return list;
}

/** Rubbing: from, to, loudness; a soft hiss that rises and falls. */
const rubs = [
  [beats.float + 1.4, beats.float + 2.2, 0.05],
  [beats.witness + 0.9, beats.witness + 2.3, 0.16],
  [beats.coverOff + 0.3, beats.coverOff + 1.9, 0.06],
  [beats.gasketOff + 1.8, beats.gasketOff + 4.0, 0.07],
  [beats.impellerOff + 1.1, beats.impellerOff + 3.1, 0.04],
  [beats.shaftOut + 0.2, beats.shaftOut + 2.6, 0.06],
  [beats.clean + 0.7, beats.clean + 2.4, 0.08],
  [beats.trial + 1.5, beats.trial + 3.4, 0.07],
  [beats.sealIn + 1.4, beats.sealIn + 3.0, 0.05],
  [beats.shaftIn, beats.shaftIn + 2.2, 0.06],
  [beats.impellerOn + 1.3, beats.impellerOn + 2.5, 0.05],
  [beats.turn + 0.1, beats.turn + 2.1, 0.05],
];

/** The whole sound as a WAV file, one channel of 16 bits. */
export const wav = () => wavOf(lengthInSeconds, events(), rubs);

/** The sound of the recording of a week later. */
export const laterWav = () => wavOf(laterLengthInSeconds, laterEvents(), []);

function wavOf(seconds, heard, rubbed) {
  const count = Math.round(seconds * samplesPerSecond);
  const sound = new Float64Array(count);
  room(sound);
  rubbing(sound, rubbed);
  for (const [second, voice, loud] of heard) {
    const { length, sound: tone } = voices[voice];
    const start = Math.round(second * samplesPerSecond);
    const last = Math.min(count - start, Math.round(length * samplesPerSecond));
    for (let i = 0; i < last; i++) sound[start + i] += 0.5 * loud * tone(i / samplesPerSecond);
  }
  const data = Buffer.alloc(44 + count * 2);
  data.write("RIFF", 0);
  data.writeUInt32LE(36 + count * 2, 4);
  data.write("WAVEfmt ", 8);
  data.writeUInt32LE(16, 16);
  data.writeUInt16LE(1, 20);
  data.writeUInt16LE(1, 22);
  data.writeUInt32LE(samplesPerSecond, 24);
  data.writeUInt32LE(samplesPerSecond * 2, 28);
  data.writeUInt16LE(2, 32);
  data.writeUInt16LE(16, 34);
  data.write("data", 36);
  data.writeUInt32LE(count * 2, 40);
  for (let i = 0; i < count; i++) {
    const faded = sound[i] * Math.min(1, i / 8000, (count - i) / 16_000);
    data.writeInt16LE(Math.round(32_000 * Math.max(-1, Math.min(1, faded))), 44 + i * 2);
  }
  return data;
}

function room(sound) {
  const random = randomNumbers(7);
  let low = 0;
  for (let i = 0; i < sound.length; i++) {
    low += 0.02 * (random() - low);
    sound[i] = 0.05 * low + 0.0012 * Math.sin((2 * Math.PI * 100 * i) / samplesPerSecond);
  }
}

function rubbing(sound, rubbed) {
  const random = randomNumbers(23);
  let [band, low] = [0, 0];
  for (const [from, to, loud] of rubbed) {
    const start = Math.round(from * samplesPerSecond);
    const last = Math.round((to - from) * samplesPerSecond);
    for (let i = 0; i < last; i++) {
      const noise = random();
      band += 0.3 * (noise - band);
      low += 0.06 * (band - low);
      const swell =
        Math.sin((Math.PI * i) / last) * (0.75 + 0.25 * Math.sin((2 * Math.PI * 9 * i) / samplesPerSecond));
      sound[start + i] += loud * swell * (band - low);
    }
  }
}
