import { framesPerSecond, height, width } from "../job/beats.mjs";
import { deskPicture } from "./photographs.mjs";
import { Studio } from "./picture.mjs";
import { laterShot, shotAt } from "./shots.mjs";

const studio = new Studio(width, height);

/** The picture of frame `index`, as red, green, blue and alpha bytes. It is overwritten by the next. */
export const drawFrame = (index) => drawShot(shotAt(index / framesPerSecond), index);

/** The same for the recording of a week later. */
export const drawLaterFrame = (index) => drawShot(laterShot, index);

function drawShot(shot, index) {
  const now = index / framesPerSecond;
  return studio.picture(shot.still, shot.moving(now), shot.view(now));
}

/** A photograph that belongs to no recording. */
export function drawPhotograph(name) {
  if (name !== "desk") throw new RangeError(`no photograph is called ${name}`);
  return studio.picture(deskPicture.things, [], deskPicture.view);
}
