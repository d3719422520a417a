import { beats } from "../job/beats.mjs";
import { along, number, placed } from "./motion.mjs";
import * as pump from "./pump.mjs";
import * as set from "./set.mjs";
import { atHome, thing } from "./set.mjs";
import * as tools from "./tools.mjs";
import { chain, ramp, turn } from "./vector.mjs";
import * as views from "./views.mjs";

const H = pump.axisHeight;

/** 48.2 to 54 s, in section: the old seal is hooked out. */
export const sealOutShot = {
  until: beats.clean - 3.0,
  view: () => views.section,
  still: set.cutOpen(),
  moving: (now) => {
    const t = beats.sealOut;
    const rock =
      now < t + 2.3 ? 5 * Math.sin(Math.max(0, now - t - 1.0) * 7) * ramp(now, t + 1.0, t + 1.6) : 0;
    const seal = along(
      now,
      [
        [t + 1.0, { x: -1.4, y: H }],
        [t + 2.2, { x: -1.12, rz: -7 }],
        [t + 3.0, { x: 1.4, y: H + 0.1, rz: -12 }],
        [t + 3.5, { x: 5.4, y: H + 0.6, rz: -16 }],
      ],
      [-1.4, 0, 0],
    );
    const hook = along(now, [
      [t - 0.2, { x: 3.2, y: H + 0.25, rz: 3 }],
      [t + 0.6, { x: -1.44, y: H - 0.02, rz: 0 }],
      [t + 1.0, { x: -1.5, y: H + 0.2, rz: 4 }],
      [t + 2.2, { x: -1.2, y: H + 0.22, rz: 10 }],
      [t + 3.0, { x: 1.28, y: H + 0.3, rz: 6 }],
      [t + 3.5, { x: 5.3, y: H + 0.8 }],
    ]);
    if (now < t - 0.2) return [atHome(set.sealCut)];
    return [thing(set.sealCut, chain(seal, turn([0, 0, 1], rock))), thing(tools.sealHook, hook)];
  },
};

/** 54 to 60.3 s, in section: the bore is wiped. */
export const cleanShot = {
  until: beats.measure - 0.3,
  view: () => views.section,
  still: set.cutOpen(),
  moving: (now) => {
    const t = beats.clean;
    if (now < t) return [];
    const swab = along(now, [
      [t, { x: 4.6, y: H + 0.2 }],
      [t + 0.8, { x: -1.5, y: H }],
      [t + 1.3, { x: -1.1 }],
      [t + 1.8, { x: -1.55 }],
      [t + 2.2, { x: -1.1 }],
      [t + 2.9, { x: 5.2, y: H + 0.3 }],
    ]);
    return [thing(tools.swab, chain(swab, turn([1, 0, 0], 300 * ramp(now, t + 0.6, t + 2.3))))];
  },
};

/** 94.7 to 98.9 s, in section: the new seal is pressed home. */
export const sealInShot = {
  until: beats.shaftIn - 0.3,
  view: () => views.pressing,
  still: set.cutOpen(),
  moving: (now) => {
    const t = beats.sealIn;
    const x = number(now, [
      [t - 0.3, 4.6],
      [t + 0.9, 1.0],
      [t + 1.4, -0.55],
      [t + 3.0, -1.22],
      [t + 3.3, -1.22],
      [t + 4.0, 3.6],
    ]);
    const sealX = now < t + 3.3 ? x + 1.22 : 0;
    const seal = placed({ x: sealX, y: H });
    return [
      thing(set.sealCut, seal),
      thing(tools.mandrel, placed({ x, y: H })),
      thing(tools.ram, placed({ x: x + 2.38, y: H })),
    ];
  },
};
