import { beats, laterBeats, laterLengthInSeconds } from "../job/beats.mjs";
import { along, placed } from "./motion.mjs";
import * as pump from "./pump.mjs";
import * as set from "./set.mjs";
import { atHome, thing } from "./set.mjs";
import { ease, ramp } from "./vector.mjs";
import * as views from "./views.mjs";

const H = pump.axisHeight;
const { fibre, steel, plug } = pump.drainSeats;

/** The drain of a cover that lies on the bench, axis upright: the place of what is `out` inches off its seat. */
const flat = {
  at: (seat, out = 0, rx = 0) => ({ x: pump.drainBelow, y: seat - 0.05 + out, z: 0, rz: 90, rx }),
  plug: { x: 3.5, y: 0.2, z: 1.5, rz: 0 },
  steel: { x: 2.5, y: 0.01, z: 2.75, rz: 90 },
  fibre: { x: 1.3, y: 0.01, z: 3.05, rz: 90 },
  handle: [100, 160],
};
/** The drain of a cover on the pump. */
const standing = {
  at: (seat, out = 0, rx = 0) => ({ x: seat + out, y: H - pump.drainBelow, z: 0, rz: 0, rx }),
  plug: { x: 3.5, y: 0.2, z: 1.9, rz: 0 },
  steel: { x: 3.0, y: 0.01, z: 2.8, rz: 90 },
  fibre: { x: 2.2, y: 0.01, z: 3.2, rz: 90 },
  handle: [40, 95],
};
const lyingFresh = { x: 1.2, y: 0.01, z: 3.4, rz: 90 };

/** The way of a part off its seat and onto the bench, `s` seconds after it began; the way back is the same in reverse. */
function way(s, drain, seat, lying, turns = 0) {
  const spun = 0.42 * ramp(s, 0, turns > 0 ? 1 : 0);
  if (s <= 0) return placed(drain.at(seat));
  if (turns > 0 && s < 1) return placed(drain.at(seat, spun, 360 * turns * ramp(s, 0, 1)));
  const off = turns > 0 ? 1 : 0;
  return along(s, [
    [off, drain.at(seat, off * 0.42)],
    [off + 0.35, drain.at(seat, 1.0)],
    [off + 0.8, { rx: 0, ...lying }],
  ]);
}

const spannerOn = (now, drain, from, [start, end]) => {
  if (now < from || now > from + 1.2) return [];
  const away = now < from + 0.3 ? 1 - ease(now, from, from + 0.3) : ease(now, from + 0.95, from + 1.2);
  const rx = start + (end - start) * ease(now, from + 0.35, from + 0.9);
  return [thing(set.plugSpanner, placed(drain.at(plug + 0.16, 0.9 * away, rx)))];
};

/** Plug and washers leave; the plug first. */
function leaving(now, t, drain) {
  return [
    thing(pump.drainPlug, way(now - t - 1.2, drain, plug, drain.plug, 3)),
    thing(pump.steelWasher, way(now - t - 3.2, drain, steel, drain.steel)),
    thing(pump.fibreWasher.old, way(now - t - 4.4, drain, fibre, drain.fibre)),
    ...spannerOn(now, drain, t, drain.handle),
  ];
}

/** Fibre, steel, plug come; `last` is how long after the first washer the plug is home. */
function coming(now, t, drain, solid, from = drain.fibre) {
  return [
    thing(solid, way(0.8 - (now - t - 0.2), drain, fibre, from)),
    thing(pump.steelWasher, way(0.8 - (now - t - 1.2), drain, steel, drain.steel)),
    thing(pump.drainPlug, way(1.8 - (now - t - 2.2), drain, plug, drain.plug, 3)),
    ...spannerOn(now, drain, t + 4.1, drain.handle.toReversed()),
  ];
}

const coverFlat = set.bareCover(placed({ rz: 90 }, set.coverPivot));

/** 66.7 to 74.1 s: plug, steel washer and fibre washer come out of the cover. */
export const plugOutShot = {
  until: beats.bath - 0.3,
  view: () => views.drain,
  still: coverFlat,
  moving: (now) => leaving(now, beats.plugOut, flat),
};

/** 88.5 to 94.7 s: they go back, the old fibre washer with them. */
export const plugInShot = {
  until: beats.sealIn - 0.3,
  view: () => views.drain,
  still: coverFlat,
  moving: (now) => coming(now, beats.plugIn, flat, pump.fibreWasher.old),
};

const together = [
  ...set.standing(),
  ...set.turning(),
  atHome(set.gaskets.fresh),
  ...set.bareCover(placed(set.coverHome, set.coverPivot)),
  ...[0, 1, 2, 3].map((i) => thing(pump.coverNut, placed(set.nutHome(i, 0, -100 - 7 * i)))),
];

/** The recording of a week later: the old fibre washer out, the new one in. */
export const laterShot = {
  until: laterLengthInSeconds,
  view: () => views.drainStanding,
  still: together,
  moving: (now) => {
    const t = laterBeats.plugIn;
    if (now < t) {
      return [...leaving(now, laterBeats.plugOut - 0.8, standing), freshLying];
    }
    const old = thing(pump.fibreWasher.old, placed(standing.fibre));
    return [...coming(now, t, standing, pump.fibreWasher.fresh, lyingFresh), old];
  },
};
const freshLying = thing(pump.fibreWasher.fresh, placed(lyingFresh));
