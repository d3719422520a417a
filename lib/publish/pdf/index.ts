export { type PdfOutput, toPdf } from "./to-pdf.ts";
