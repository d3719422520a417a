import { placed } from "./motion.mjs";
import * as pump from "./pump.mjs";
import * as tools from "./tools.mjs";
import { chain, move } from "./vector.mjs";

/** Things that stand in many shots, made once, and where parts come to lie. */
const H = pump.axisHeight;
export const home = placed({ y: H });
const homeAt = (centre, x = 0) => placed({ x, y: H + centre[1], z: centre[2] });

const bodyWhole = pump.body(false);
const bodyCut = pump.body(true);
const bushWhole = pump.bush(false);
const bushCut = pump.bush(true);
export const sealCut = pump.seal(true);
const sealWhole = pump.seal(false);
export const gaskets = {
  old: pump.gasket("gasketOld"),
  wet: pump.gasket("gasketWet"),
  fresh: pump.gasket("gasketNew"),
};
export const spanner = tools.openSpanner(0.5, 5.6);
export const plugSpanner = tools.openSpanner(0.4, 3.4);
export const ring = tools.ringSpanner(0.66, 5);
export const wrenchSmall = tools.torqueWrench(0.5);
export const wrenchLarge = tools.torqueWrench(0.64);

export const thing = (solid, pose, more = {}) => ({ solid, pose, ...more });
export const atHome = (solid) => thing(solid, home);

/** The body with its bush, studs and scratch; with or without the seal. */
export const standing = ({ seal = true, scratch = true } = {}) => [
  atHome(bodyWhole),
  atHome(bushWhole),
  ...(seal ? [atHome(sealWhole)] : []),
  ...pump.studCentres.map((centre) => thing(pump.stud, homeAt(centre))),
  ...(scratch ? [thing(pump.scratchOnBody, home, { ink: false, shadow: false })] : []),
];

/** The body cut open from the front to the top. */
export const cutOpen = () => [
  atHome(bodyCut),
  atHome(bushCut),
  ...pump.studCentres.slice(1).map((centre) => thing(pump.stud, homeAt(centre))),
];

/** Shaft, pulley and thrust washer, moved along and turned about the axis together. */
export const turning = ({ x = 0, rx = 0, washerX = x } = {}) => [
  thing(pump.shaft, placed({ x, y: H, rx })),
  thing(pump.pulley, placed({ x, y: H, rx })),
  thing(pump.washer, placed({ x: washerX, y: H })),
];

export const coverPivot = [0.05, 0, 0];
export const coverHome = { x: 0.05, y: H, z: 0, rz: 0 };
export const coverLying = { x: 4.5, y: 0, z: -3.3, rz: 90 };
export const cover = (pose, scratch = true) => [...bareCover(pose, scratch), ...drain(pose)];

/** The cover without what closes its drain. */
export const bareCover = (pose, scratch = true) => [
  thing(pump.cover, pose),
  ...(scratch ? [thing(pump.scratchOnCover, pose, { ink: false, shadow: false })] : []),
];

const drain = (pose) =>
  [
    [pump.fibreWasher.old, pump.drainSeats.fibre],
    [pump.steelWasher, pump.drainSeats.steel],
    [pump.drainPlug, pump.drainSeats.plug],
  ].map(([solid, x]) => thing(solid, chain(pose, move(x, -pump.drainBelow, 0))));

export const impellerPivot = [-1.15, 0, 0];
export const impellerHome = { x: -1.15, y: H, z: 0, rz: 0 };
export const impellerLying = { x: 3.3, y: 0, z: -3.9, rz: 90, rx: 0 };

export const tinOne = { x: 1.6, y: 0, z: 3.7 };
export const tinTwo = { x: 3.8, y: 0, z: -1.3 };

/** A cover nut at stud `index`, `out` inches off its seat and turned by `rx`. */
export const nutHome = (index, out = 0, rx = 0) => {
  const [, y, z] = pump.studCentres[index];
  return { x: 0.35 + out, y: H + y, z, rx, rz: 0 };
};
const inTin = [
  [-0.42, -0.3, 20],
  [0.38, -0.36, 75],
  [-0.28, 0.44, 140],
  [0.44, 0.36, 200],
];
export const nutInTin = (index) => ({
  x: tinOne.x + inTin[index][0],
  y: 0.12,
  z: tinOne.z + inTin[index][1],
  rz: 90,
  rx: inTin[index][2],
});
export const impellerNutInTin = { x: tinTwo.x - 0.25, y: 0.42, z: tinTwo.z + 0.1, rz: 90 };
