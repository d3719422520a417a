import { placed } from "./motion.mjs";
import * as pump from "./pump.mjs";
import * as set from "./set.mjs";
import { thing } from "./set.mjs";
import * as tools from "./tools.mjs";
import * as views from "./views.mjs";

/** A photograph for the desk: the three new parts beside a rule. */
export const deskPicture = {
  view: views.desk,
  things: [
    thing(tools.sheet, placed({ y: 0 }), { ink: true }),
    thing(tools.rule, placed({ x: -3.4, y: 0.02, z: 2.2 })),
    thing(set.gaskets.fresh, placed({ x: -1.4, y: 0.02, z: -0.45, rz: 90 })),
    thing(pump.seal(false), placed({ x: 2.2, y: 0.02, z: -0.9, rz: 90 }, [-1.59, 0, 0])),
    thing(pump.washer, placed({ x: 2.6, y: 0.02, z: 1.2, rz: 90 }, [-3.27, 0, 0])),
  ],
};
