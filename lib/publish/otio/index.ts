export { toOtio } from "./to-otio.ts";
