import { circle, polar } from "./outlines.mjs";

/**
 * The parts of the pump, in inches, each where it sits in the assembled pump: the axis is x, the joint face of
 * the body lies at x = 0, the cover to the right of it, the pulley to the left. Gaps and thin parts are drawn
 * thicker than they are, as in any drawing.
 */
export const axisHeight = 2.6;
export const studAngles = [45, 135, 225, 315];
const studRadius = 1.98;
export const studCentres = studAngles.map((degrees) => {
  const [z, y] = polar(degrees, studRadius);
  return [0, y, z];
});
/** A place on the axis's cross section as a point of an outline. */
export const flat = ([, y, z]) => [z, y];

/** The outline of flange, gasket and cover: a disc with a lug round each stud. */
function flangeOutline(disc, lug) {
  return Array.from({ length: 240 }, (_, k) => {
    const angle = (k * 2 * Math.PI) / 240;
    const off = Math.min(
      ...studAngles.map((s) =>
        Math.abs(Math.atan2(Math.sin(angle - (s * Math.PI) / 180), Math.cos(angle - (s * Math.PI) / 180))),
      ),
    );
    const across = lug ** 2 - (studRadius * Math.sin(off)) ** 2;
    const reach = across > 0 ? studRadius * Math.cos(off) + Math.sqrt(across) : 0;
    const radius = Math.log(Math.exp(disc * 26) + Math.exp(reach * 26)) / 26;
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  });
}
export const outline = flangeOutline(2.02, 0.4);
export const studHoles = studCentres.map((centre) => circle(flat(centre), 0.15, 20));
