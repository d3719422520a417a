export { toMarkdown } from "./to-markdown.ts";
