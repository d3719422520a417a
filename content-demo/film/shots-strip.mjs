import { beats } from "../job/beats.mjs";
import { along, placed } from "./motion.mjs";
import * as pump from "./pump.mjs";
import * as set from "./set.mjs";
import { atHome, thing } from "./set.mjs";
import * as tools from "./tools.mjs";
import { chain, ease, ramp, turn } from "./vector.mjs";
import * as views from "./views.mjs";

const H = pump.axisHeight;

const bagAt = { x: 2.6, y: 0, z: -3.9, ry: -14 };

/** 23 to 32 s: the old gasket is wetted, peeled off and bagged. */
export const gasketShot = {
  until: beats.impellerNutOff - 0.6,
  view: () => views.near,
  still: [
    ...set.standing(),
    ...set.turning(),
    atHome(pump.impeller),
    atHome(pump.impellerNut),
    thing(tools.bag, placed(bagAt)),
  ],
  moving: (now) => {
    const t = beats.gasketOff;
    const wet = now >= t + 1.4;
    const solid = wet ? set.gaskets.wet : set.gaskets.old;
    const done = ease(now, t + 1.8, t + 4.2);
    const shape = done > 0 ? pump.peeled(solid, done * 0.93) : solid;
    const bottom = [0, -2.3, 0];
    const gone = along(
      now,
      [
        [t + 3.9, { y: H - 2.3 }],
        [t + 4.4, { x: 1.6, y: H - 0.9, z: -0.6, rz: 20 }],
        [t + 5.0, { x: bagAt.x, y: 3.5, z: bagAt.z, ry: bagAt.ry, rz: 78 }],
        [t + 5.5, { y: 0.2 }],
      ],
      bottom,
    );
    const fold = ease(now, t + 4.0, t + 5.0);
    const folded = chain(gone, [1 - 0.2 * fold, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1 - 0.42 * fold, 0]);
    const things = [thing(shape, now < t + 3.9 ? set.home : folded)];
    if (now > t - 0.8 && now < t + 2.4) things.push(...wetting(now, t));
    return things;
  },
};

function wetting(now, t) {
  const away = { x: 6.4, y: 4.8, z: -0.6, rz: 10 };
  const over = { x: 2.5, y: 3.5, z: 1.0, rz: 48 };
  const place = along(now, [
    [t - 0.8, away],
    [t + 0.1, over],
    [t + 0.8, { y: 3.75, z: -0.9 }],
    [t + 1.5, { y: 3.4, z: 0.8 }],
    [t + 2.3, away],
  ]);
  const bottle = chain(place, [0.58, 0, 0, 0, 0, 0.58, 0, 0, 0, 0, 0.58, 0]);
  const spout = [0, 4, 8].map(
    (r) => bottle[r + 3] + [0, 1, 2].reduce((sum, k) => sum + bottle[r + k] * tools.spoutEnd[k], 0),
  );
  const drops = [];
  if (now > t + 0.1 && now < t + 1.6) {
    for (let i = 0; i < 4; i++) {
      const age = (now * 1.9 + i * 0.25) % 1;
      const place = {
        x: spout[0] - 0.45 * age,
        y: spout[1] - 1.3 * age * age,
        z: spout[2],
        rz: 60 + 25 * age,
      };
      drops.push(thing(tools.drop, placed(place), { shadow: false }));
    }
  }
  return [thing(tools.washBottle, bottle), ...drops];
}

/** 31.4 to 41.6 s: impeller nut and impeller. */
export const impellerShot = {
  until: beats.keyOff - 0.3,
  view: () => views.near,
  still: [...set.standing(), ...set.turning(), thing(tools.tin, placed(set.tinTwo)), atHome(pump.key)],
  moving: (now) => [...impellerNutLeaving(now), ...impellerLeaving(now)],
};

function impellerNutLeaving(now) {
  const t = beats.impellerNutOff;
  const swing = -60 * ease(now, t + 0.8, t + 1.8);
  const spin = -720 * ramp(now, t + 2.0, t + 2.9);
  const out = 0.05 * ease(now, t + 0.8, t + 1.8) + 0.5 * ramp(now, t + 2.0, t + 2.9);
  const seat = { x: out, y: H, rx: swing + spin };
  const nut =
    now < t + 2.9
      ? placed(seat)
      : along(now, [
          [t + 2.9, seat],
          [t + 3.3, { x: 1.5 }],
          [t + 3.7, { x: set.impellerNutInTin.x, y: 1.9, z: set.impellerNutInTin.z, rz: 90 }],
          [t + 4.0, set.impellerNutInTin],
        ]);
  const spanner = along(now, [
    [t, { x: 1.2, y: H, rx: 31 }],
    [t + 0.6, { x: -0.1 }],
    [t + 1.8, { x: -0.05, rx: 31 }],
    [t + 2.1, { x: 1.4 }],
  ]);
  const things = [thing(pump.impellerNut, nut)];
  if (now > t - 0.3 && now < t + 2.1) things.push(thing(set.ring, chain(spanner, turn([1, 0, 0], swing))));
  return things;
}

function impellerLeaving(now) {
  const t = beats.impellerOff;
  const drawn = 0.92 * ramp(now, t + 1.1, t + 3.1);
  const seat = { ...set.impellerHome, x: set.impellerHome.x + drawn };
  const pose =
    now < t + 3.2
      ? placed(seat, set.impellerPivot)
      : along(
          now,
          [
            [t + 3.2, seat],
            [t + 3.9, { x: 1.6 }],
            [t + 4.5, set.impellerLying],
          ],
          set.impellerPivot,
        );
  const screws = pump.jackCentres.flatMap(([, y, z], i) => {
    if (now < t - 0.2 || now > t + 3.6) return [];
    const rx = 90 * i + 900 * ramp(now, t + 0.5, t + 3.1);
    const far = { x: 1.8, y: H + y, z };
    const inside = along(now, [
      [t - 0.2, far],
      [t + 1.1, { x: -1.2 }],
      [t + 3.1, { x: -1.2 }],
      [t + 3.6, { x: 2.6 }],
    ]);
    return [thing(pump.jackingScrew, chain(inside, turn([1, 0, 0], rx)))];
  });
  return [thing(pump.impeller, pose), ...screws];
}

/** 41.7 to 44.3 s: the key. */
export const keyShot = {
  until: beats.shaftOut - 0.3,
  view: () => views.keyView,
  still: [...set.standing(), ...set.turning()],
  moving: (now) => {
    const t = beats.keyOff;
    const pivot = [-0.72, 0.28, 0];
    const keys = [
      [t + 0.2, { x: -0.72, y: H + 0.28 }],
      [t + 0.7, { y: H + 0.36, rz: -14 }],
      [t + 1.3, { x: -0.6, y: H + 0.72, rz: 0 }],
      [t + 1.6, { x: -0.6, y: H + 0.72, rz: 0 }],
      [t + 2.2, { x: 2.4, y: H + 1.2, z: 1.8 }],
    ];
    return [thing(pump.key, along(now, keys, pivot))];
  },
};

/** 44.3 to 48.2 s: shaft, pulley and thrust washer leave to the left. */
export const shaftShot = {
  until: beats.sealOut - 2.2,
  view: () => views.side,
  still: set.standing(),
  moving: (now) => {
    const t = beats.shaftOut;
    const x = -4.6 * ease(now, t + 0.2, t + 2.6);
    return set.turning({ x, rx: -140 * ease(now, t + 0.2, t + 2.6), washerX: x < -0.07 ? x + 0.02 : 0 });
  },
};
