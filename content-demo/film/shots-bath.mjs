import { beats } from "../job/beats.mjs";
import { along, placed } from "./motion.mjs";
import * as pump from "./pump.mjs";
import * as set from "./set.mjs";
import { thing } from "./set.mjs";
import * as tools from "./tools.mjs";
import { chain } from "./vector.mjs";
import * as views from "./views.mjs";

const H = pump.axisHeight;
const over = { x: 0, y: 4.4, z: 0, rz: 90, rx: 0 };
const under = { y: 0.22 };

/** 74.1 to 78.7 s: the cover sinks in the bath. */
export const bathShot = {
  until: beats.bathOut - 0.3,
  view: () => views.bath,
  still: [thing(tools.tub, placed({}))],
  moving: (now) => {
    const t = beats.bath;
    const keys = [
      [t - 0.3, { ...over, x: 3.4, y: 5 }],
      [t + 0.7, over],
      [t + 2.6, under],
    ];
    return set.bareCover(along(now, keys, set.coverPivot));
  },
};

/** 78.7 to 82.7 s: it comes out, and drips. */
export const bathOutShot = {
  until: beats.trial - 0.3,
  view: () => views.bath,
  still: [thing(tools.tub, placed({}))],
  moving: (now) => {
    const t = beats.bathOut;
    const keys = [
      [t + 0.2, { ...over, ...under }],
      [t + 1.9, over],
      [t + 2.9, { y: 4.4 }],
      [t + 3.6, { x: 3.6, y: 5 }],
    ];
    return [...set.bareCover(along(now, keys, set.coverPivot)), ...drops(now, t + 1.4)];
  },
};

function drops(now, from) {
  if (now < from || now > from + 1.6) return [];
  return [0, 1, 2, 3].flatMap((i) => {
    const age = (now * 1.7 + i * 0.29) % 1;
    const y = 4.2 - 2.3 * age * age;
    return [
      thing(tools.drop, placed({ x: -1.2 + 0.8 * i, y, z: 0.7 - 0.5 * i, rz: -90 }), { shadow: false }),
    ];
  });
}

/** The kit's gasket: its holes lie on a circle a tenth larger than that of the studs. */
const larger = [1, 0, 0, 0, 0, 1.1, 0, 0, 0, 0, 1.1, 0];

/** 82.7 to 88.5 s: the kit's gasket is held to the studs, turned this way and that, and taken away. */
export const trialShot = {
  until: beats.plugIn - 0.3,
  view: () => views.front,
  still: set.standing({ seal: false }),
  moving: (now) => {
    const t = beats.trial;
    const keys = [
      [t - 0.2, { x: 4.4, y: H + 0.7, z: 2.2, ry: 16 }],
      [t + 1.0, { x: 1.4, y: H, z: 0, ry: 0 }],
      [t + 1.5, { x: 0.99 }],
      [t + 2.1, { rx: 7 }],
      [t + 2.8, { rx: -7 }],
      [t + 3.4, { rx: 0, y: H + 0.14 }],
      [t + 3.9, { y: H }],
      [t + 4.3, { x: 1.5 }],
      [t + 5.4, { x: 4.6, y: H + 0.7, z: 2.6, ry: 16 }],
    ];
    return [thing(set.gaskets.fresh, chain(along(now, keys), larger))];
  },
};
