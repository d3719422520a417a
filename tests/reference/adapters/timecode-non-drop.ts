export { adapter } from "./timecode-drop-frame.ts";
