import { beats } from "../job/beats.mjs";
import { along, placed } from "./motion.mjs";
import * as pump from "./pump.mjs";
import { thing } from "./set.mjs";
import * as tools from "./tools.mjs";
import { chain, ease, turn } from "./vector.mjs";
import * as views from "./views.mjs";

const trackAt = -1.42;

/** 60.3 to 63.7 s: the shaft lies on blocks and is measured on the seal track. */
export const shaftMeasureShot = {
  until: beats.measure + 3.1,
  view: () => views.shaftView,
  still: [
    thing(tools.block, placed({ x: -1.45 })),
    thing(tools.block, placed({ x: 1.05 })),
    thing(pump.shaft, placed({ x: -trackAt - 0.2, y: tools.grooveHeight, rx: -60 })),
    thing(pump.pulley, placed({ x: -trackAt - 0.2, y: tools.grooveHeight, rx: 20 })),
  ],
  moving: (now) => {
    const t = beats.measure;
    const open = 0.51 + 0.36 * (1 - ease(now, t + 1.0, t + 1.7));
    const place = along(now, [
      [t - 0.2, { x: -0.2, y: tools.grooveHeight + 1.2, z: 4.2 }],
      [t + 0.9, { y: tools.grooveHeight, z: 0 }],
      [t + 2.6, { y: tools.grooveHeight, z: 0 }],
      [t + 3.1, { z: 2.2 }],
    ]);
    const upright = chain(
      place,
      turn([1, 0, 0], -24),
      turn([0, 1, 0], 0),
      turn([0, 0, 1], 90),
      turn([1, 0, 0], 90),
    );
    return [thing(tools.micrometer(open), upright)];
  },
};

/** 63.7 to 66.8 s: the old thrust washer between the faces. */
export const washerMeasureShot = {
  until: beats.plugOut - 0.3,
  view: () => views.washerView,
  still: [thing(tools.stand, placed({ x: 0.2 }))],
  moving: (now) => {
    const t = beats.measure + 3.1;
    const open = 0.075 + 0.5 * (1 - ease(now, t + 0.9, t + 1.7));
    const washer = along(
      now,
      [
        [t, { x: 0, y: 5.6, z: 0.4 }],
        [t + 0.8, { y: 2.75, z: 0 }],
      ],
      [-3.235, 0, 0],
    );
    return [thing(tools.micrometer(open), placed({ y: 2.45 })), thing(pump.washer, washer)];
  },
};
