export { type BodyOptions, procedureBody } from "./body.ts";
export { toHtml } from "./to-html.ts";
