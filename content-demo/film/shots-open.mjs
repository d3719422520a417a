import { beats } from "../job/beats.mjs";
import { along, placed } from "./motion.mjs";
import * as pump from "./pump.mjs";
import * as set from "./set.mjs";
import { atHome, thing } from "./set.mjs";
import * as tools from "./tools.mjs";
import { chain, ease, ramp, turn } from "./vector.mjs";
import * as views from "./views.mjs";

const H = pump.axisHeight;

const closed = (scratch) => [
  atHome(set.gaskets.old),
  ...set.cover(placed(set.coverHome, set.coverPivot), scratch),
  ...[0, 1, 2, 3].map((i) => thing(pump.coverNut, placed(set.nutHome(i, 0, 11 * i)))),
];

/** The feeler blade on its way into the gap at the pulley, and out again. */
export function feelerAt(now, start, stay) {
  const away = { x: -3.305, y: H + 3.2, z: 3.4, rx: 38 };
  const inGap = { y: H + 0.3, z: 0.12 };
  const keys = [
    [start, away],
    [start + 1.3, { y: H + 0.75, z: 0.5 }],
    [start + 2.0, inGap],
    [start + stay, inGap],
    [start + stay + 0.8, away],
  ];
  return thing(tools.feeler, along(now, keys));
}

/** 0 to 10 s: the whole pump, then the end float. */
export const floatShot = {
  until: beats.witness,
  view: (now) => (now < beats.float ? views.wide : views.gap),
  still: [...set.standing({ scratch: false }), ...set.turning(), ...closed(false)],
  moving: (now) => (now > beats.float + 0.2 ? [feelerAt(now, beats.float + 0.2, 4.2)] : []),
};

/** 10 to 13.6 s: the witness mark. */
export const witnessShot = {
  until: beats.nutsOff,
  view: () => views.joint,
  still: [...set.standing({ scratch: false }), ...set.turning(), ...closed(false)],
  moving: (now) => {
    const start = beats.witness + 0.9;
    const tip = -0.3 + 0.65 * ramp(now, start, start + 1.4);
    const top = H + 2.035;
    const keys = [
      [beats.witness + 0.1, { x: -0.3, y: top + 1.6, z: 1.2 }],
      [start, { x: -0.3, y: top, z: 0 }],
      [start + 1.4, { x: 0.35, y: top, z: 0 }],
      [start + 2.3, { x: 1.0, y: top + 1.8, z: 1.4 }],
    ];
    const place = now > start && now < start + 1.4 ? placed({ x: tip, y: top, z: 0 }) : along(now, keys);
    const scratch = (solid, x0, length) => {
      const drawn = Math.min(1, (tip - x0) / length);
      if (drawn <= 0) return [];
      const pose = chain(
        placed({ x: x0, y: H }),
        [drawn, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0],
        placed({ x: -x0 }),
      );
      return [thing(solid, pose, { ink: false, shadow: false })];
    };
    return [
      ...scratch(pump.scratchOnBody, -0.3, 0.3),
      ...scratch(pump.scratchOnCover, 0.05, 0.3),
      thing(tools.scriber, chain(place, turn([1, 0, 0], 38), turn([0, 0, 1], -24))),
    ];
  },
};

const cross = [0, 2, 1, 3];

/** Where cover nut `index` is while it is undone: half a turn with the spanner, then spun off into the tin. */
function nutLeaving(now, index) {
  const turnNumber = cross.indexOf(index);
  const loose = beats.nutsOff + 0.3 + turnNumber * 0.7;
  const spin = beats.nutsOff + 3.1 + turnNumber * 0.38;
  const first = ease(now, loose + 0.15, loose + 0.6);
  const off = ramp(now, spin, spin + 0.75);
  const rx = 11 * index + 60 * first + 900 * off;
  const seat = set.nutHome(index, 0.05 * first + 0.62 * off, rx);
  if (now < spin + 0.75) return placed(seat);
  return along(now, [
    [spin + 0.75, seat],
    [spin + 1.05, { x: seat.x + 0.7 }],
    [spin + 1.5, { x: set.nutInTin(index).x, y: 1.8, z: set.nutInTin(index).z, rz: 90 }],
    [spin + 1.85, set.nutInTin(index)],
  ]);
}

function spannerAt(now) {
  const shots = cross.map((index, i) => ({ index, from: beats.nutsOff + 0.3 + i * 0.7 }));
  const shot = shots.find(({ from }) => now < from + 0.7);
  if (!shot) return [];
  const [, y, z] = pump.studCentres[shot.index];
  const swing = 60 * ease(now, shot.from + 0.15, shot.from + 0.6);
  const off =
    now < shot.from + 0.12
      ? 1 - ramp(now, shot.from, shot.from + 0.12)
      : ramp(now, shot.from + 0.6, shot.from + 0.7);
  const lean = z > 0 ? 75 : -60;
  return [thing(set.spanner, placed({ x: 0.6 + 0.6 * off, y: H + y, z, rx: lean + swing - 30 }))];
}

/** 13.6 to 23 s: nuts and cover come off. */
export const nutsAndCoverShot = {
  until: beats.gasketOff - 2.8,
  view: () => views.front,
  still: [
    ...set.standing(),
    ...set.turning(),
    atHome(set.gaskets.old),
    atHome(pump.impeller),
    atHome(pump.impellerNut),
    thing(tools.tin, placed(set.tinOne)),
  ],
  moving: (now) => {
    const t = beats.coverOff;
    const coverPose = along(
      now,
      [
        [t + 0.3, set.coverHome],
        [t + 1.9, { x: 2.7 }],
        [t + 2.3, { x: 3.0, y: H + 0.2, z: -0.2 }],
        [t + 3.1, set.coverLying],
      ],
      set.coverPivot,
    );
    return [
      ...set.cover(coverPose),
      ...[0, 1, 2, 3].map((i) => thing(pump.coverNut, nutLeaving(now, i))),
      ...spannerAt(now),
    ];
  },
};
