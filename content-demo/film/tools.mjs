export * from "./bench-tools.mjs";
export * from "./hand-tools.mjs";
