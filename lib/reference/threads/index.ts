export { compareThreads, confusedWith, type ThreadComparison } from "./compare.ts";
export { type BasicSizes, baForm, baFormula, cycleForm, isoForm, whitworthForm } from "./form.ts";
export { type LikeAsked, type LikeThread, threadsLike } from "./like.ts";
export { isInIso262 } from "./metric.ts";
export { threadOf, threadsNamed, unlistedNearest } from "./named.ts";
export { allThreads, threadTables } from "./tables.ts";
export { sizeOf, type Thread, type ThreadForm } from "./thread.ts";
export { numberedDiameter } from "./unified.ts";
