export { type BodyOptions, originalPicture, procedureBody } from "./body.ts";
export { toHtml } from "./to-html.ts";
