export { toHowTo } from "./to-howto.ts";
