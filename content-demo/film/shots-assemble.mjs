import { beats, lengthInSeconds } from "../job/beats.mjs";
import { along, placed } from "./motion.mjs";
import * as pump from "./pump.mjs";
import * as set from "./set.mjs";
import { atHome, thing } from "./set.mjs";
import { feelerAt } from "./shots-open.mjs";
import * as tools from "./tools.mjs";
import { chain, ease, ramp, turn } from "./vector.mjs";
import * as views from "./views.mjs";

const H = pump.axisHeight;

/** 98.9 to 101.7 s: shaft and new thrust washer go in from the left. */
export const shaftInShot = {
  until: beats.impellerOn - 0.3,
  view: () => views.side,
  still: set.standing(),
  moving: (now) => {
    const t = beats.shaftIn;
    const k = ease(now, t - 0.1, t + 2.2);
    const x = -4.6 * (1 - k);
    return set.turning({ x, rx: 140 * (1 - k), washerX: x < -0.02 ? x + 0.02 : 0 });
  },
};

/** 101.7 to 107.3 s: key, impeller and impeller nut. */
export const impellerOnShot = {
  until: beats.coverOn - 0.3,
  view: (now) => (now < beats.impellerNutOn - 0.4 ? views.near : views.torque),
  still: [...set.standing(), ...set.turning()],
  moving: (now) => [...keyAndImpeller(now), ...impellerNutOn(now)],
};

function keyAndImpeller(now) {
  const t = beats.impellerOn;
  const key = along(
    now,
    [
      [t - 0.3, { x: 0.6, y: H + 1.3 }],
      [t + 0.3, { x: -0.72, y: H + 1.0 }],
      [t + 0.8, { y: H + 0.28 }],
    ],
    [-0.72, 0.28, 0],
  );
  const impeller = along(
    now,
    [
      [t + 0.5, { x: 2.9, y: H - 0.6, z: 2.6, rx: -60 }],
      [t + 1.3, { x: 1.5, y: H, z: 0, rx: 0 }],
      [t + 2.5, { x: -1.15 }],
    ],
    set.impellerPivot,
  );
  return [thing(pump.key, key), ...(now > t + 0.5 ? [thing(pump.impeller, impeller)] : [])];
}

function impellerNutOn(now) {
  const t = beats.impellerNutOn;
  if (now < t - 0.3) return [];
  const spin = ramp(now, t + 0.1, t + 0.7);
  const nut =
    now < t + 0.1
      ? along(now, [
          [t - 0.3, { x: 2.4, y: H - 0.3, z: 0.8 }],
          [t + 0.1, { x: 0.5, y: H, z: 0 }],
        ])
      : placed({ x: 0.5 * (1 - spin), y: H, rx: 720 * spin + 35 * ease(now, t + 1.2, t + 2.0) });
  const things = [thing(pump.impellerNut, nut)];
  if (now > t + 0.6) {
    const swing = -72 + 35 * ease(now, t + 1.2, t + 2.0);
    const wrench = along(now, [
      [t + 0.6, { x: 2.4, y: H }],
      [t + 1.1, { x: -0.1 }],
      [t + 2.1, { x: -0.1 }],
      [t + 2.4, { x: 1.6 }],
    ]);
    things.push(thing(set.wrenchLarge, chain(wrench, turn([1, 0, 0], swing))));
  }
  return things;
}

const cross = [0, 2, 1, 3];

/** 107.3 to 118.2 s: gasket, cover, nuts finger-tight, nuts tightened in a cross. */
export const coverOnShot = {
  until: beats.turn - 0.6,
  view: (now) => (now < beats.nutsTight - 0.1 ? views.front : views.crossing),
  still: [
    ...set.standing(),
    ...set.turning(),
    atHome(pump.key),
    atHome(pump.impeller),
    atHome(pump.impellerNut),
    thing(tools.tin, placed(set.tinOne)),
  ],
  moving: (now) => {
    const t = beats.coverOn;
    const gasket = along(now, [
      [t - 0.2, { x: 3.2, y: H + 0.8, z: 1.6, ry: 20 }],
      [t + 0.5, { x: 1.2, y: H, z: 0, ry: 0 }],
      [t + 1.0, { x: 0 }],
    ]);
    const coverPose = along(
      now,
      [
        [t + 0.4, set.coverLying],
        [t + 1.2, { x: 3.0, y: H, z: 0, rz: 0 }],
        [t + 2.4, set.coverHome],
      ],
      set.coverPivot,
    );
    return [
      thing(set.gaskets.fresh, gasket),
      ...set.cover(coverPose),
      ...[0, 1, 2, 3].map((index) => thing(pump.coverNut, nutComing(now, index))),
      ...wrenchAt(now),
    ];
  },
};

function nutComing(now, index) {
  const order = cross.indexOf(index);
  const start = beats.nutsOn + order * 0.28;
  const onThread = set.nutHome(index, 0.68, 0);
  if (now < start + 0.8) {
    return along(now, [
      [start, set.nutInTin(index)],
      [start + 0.4, { y: 1.9 }],
      [start + 0.8, { ...onThread, rx: 0 }],
    ]);
  }
  const spin = ramp(now, start + 0.8, start + 1.5);
  const tight = ramp(now, beats.nutsTight + 0.5 + order * 0.4, beats.nutsTight + 0.75 + order * 0.4);
  const tighter = ramp(now, beats.nutsTight + 2.15 + order * 0.4, beats.nutsTight + 2.4 + order * 0.4);
  return placed(
    set.nutHome(
      index,
      0.68 - 0.6 * spin - 0.06 * tight - 0.02 * tighter,
      -780 * spin - 25 * tight - 15 * tighter,
    ),
  );
}

function wrenchAt(now) {
  const stops = [...cross.map((index, i) => [index, i]), ...cross.map((index, i) => [index, i + 4.125])];
  const stop = stops.find(([, i]) => {
    const from = beats.nutsTight + 0.35 + i * 0.4;
    return now >= from && now < from + 0.4;
  });
  if (!stop) return [];
  const [index, i] = stop;
  const from = beats.nutsTight + 0.35 + i * 0.4;
  const [, y, z] = pump.studCentres[index];
  const off = now < from + 0.12 ? 1 - ease(now, from, from + 0.12) : ease(now, from + 0.32, from + 0.4);
  const lean = z > 0 ? 48 : -62;
  const swing = lean + 12 - 25 * ramp(now, from + 0.12, from + 0.32);
  return [thing(set.wrenchSmall, placed({ x: 0.45 + 0.5 * off, y: H + y, z, rx: swing }))];
}

const together = [
  ...set.standing(),
  atHome(set.gaskets.fresh),
  ...set.cover(placed(set.coverHome, set.coverPivot)),
  ...[0, 1, 2, 3].map((i) => thing(pump.coverNut, placed(set.nutHome(i, 0, -100 - 7 * i)))),
];

/** 117.6 s to the end: one turn by hand, then the end float again. */
export const proveShot = {
  until: lengthInSeconds,
  view: (now) => (now < beats.floatAgain - 0.2 ? views.wide : views.gap),
  still: together,
  moving: (now) => [
    ...set.turning({ rx: 360 * ease(now, beats.turn + 0.1, beats.turn + 2.1) }),
    ...(now > beats.floatAgain - 0.1 ? [feelerAt(now, beats.floatAgain - 0.1, 3.6)] : []),
  ],
};
