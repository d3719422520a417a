import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import type { NodeCompiler as Compiler, NodeTypstCompileResult } from "@myriaddreamin/typst-ts-node-compiler";
import type { PrintOrder, PrintResult } from "./order.ts";

/**
 * The child process that sets and exports a print. The compiler cannot be stopped and keeps its memory, so it
 * runs here, once, and the parent may kill it.
 */
const { NodeCompiler } = createRequire(import.meta.url)(
  "@myriaddreamin/typst-ts-node-compiler",
) as typeof import("@myriaddreamin/typst-ts-node-compiler");

process.once("message", (order: PrintOrder) => {
  const result = print(order);
  process.send?.(result, () => process.exit(0));
});
process.once("disconnect", () => process.exit(1));

function print(order: PrintOrder): PrintResult {
  try {
    const compiler = load(order);
    const compiled = compiler.compile({ mainFilePath: join(order.workspace, order.main) });
    if (compiled.hasError()) return { ok: false, message: diagnostics(compiler, compiled) };
    return exportPdf(compiler, compiled);
  } catch (error) {
    return { ok: false, message: messageOf(error) };
  }
}

/** A compiler whose files are those of the order alone, in a folder that does not exist. */
function load(order: PrintOrder): Compiler {
  const fonts = order.fonts.map((file) => readFileSync(file));
  const compiler = NodeCompiler.create({ workspace: order.workspace, fontArgs: [{ fontBlobs: fonts }] });
  for (const { name, text } of order.sources) compiler.addSource(join(order.workspace, name), text);
  for (const { name, bytes } of order.data) {
    compiler.mapShadow(join(order.workspace, name), Buffer.from(bytes));
  }
  return compiler;
}

/** PDF/UA-1 where the text allows it, else tagged PDF 1.7 and the reason why. */
function exportPdf(compiler: Compiler, compiled: NodeTypstCompileResult): PrintResult {
  const document = compiled.result;
  if (!document) return { ok: false, message: "the compiler gave no document" };
  const notes = notesOf(compiler, document);
  try {
    return {
      ok: true,
      standard: "ua-1",
      pdf: compiler.pdf(document, { pdfStandard: "ua-1" }),
      why: "",
      notes,
    };
  } catch (error) {
    const pdf = compiler.pdf(document, { pdfStandard: "1.7" });
    return { ok: true, standard: "tagged-1.7", pdf, why: reasonOf(error), notes };
  }
}

/** The first message among the diagnostics of an export, which come as the compiler's own debug text. */
function reasonOf(error: unknown): string {
  const whole = messageOf(error);
  const [, first] = /message: "((?:[^"\\]|\\.)*)"/.exec(whole) ?? [];
  return (first ?? whole).replace(/\\+"/g, '"').slice(0, 300);
}

/** What the template noted while it set the pages, such as cautions that fill more than a page. */
function notesOf(compiler: Compiler, document: NonNullable<NodeTypstCompileResult["result"]>): string[] {
  const found = compiler.query(document, { selector: "<note>", field: "value" }) as unknown;
  return Array.isArray(found) ? found.map(String) : [];
}

function diagnostics(compiler: Compiler, compiled: NodeTypstCompileResult): string {
  const error = compiled.takeDiagnostics();
  if (!error) return "the compiler gave no reason";
  const all = compiler.fetchDiagnostics(error) as { message?: string }[];
  return all.map((one) => one.message ?? JSON.stringify(one)).join("; ");
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
