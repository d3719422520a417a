export { type Entry, type Figure, inInches, inMillimetres, type Reply, type SideBySide } from "./reply.ts";
export { replyTo } from "./reply-to.ts";
