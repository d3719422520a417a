export { toAnnotations } from "./to-annotations.ts";
