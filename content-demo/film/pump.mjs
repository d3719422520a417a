/** The parts of the pump; how they are placed is said in `flange.mjs`. */
export * from "./casting.mjs";
export { axisHeight, studCentres } from "./flange.mjs";
export * from "./gasket.mjs";
export * from "./running.mjs";
