import { HtmlValidate } from "html-validate";
import { expect, test } from "vitest";
import { toHtml } from "#lib/publish/index.ts";
import { checked, hostileJob, longJob, options, smallJob } from "./sample.ts";

// html-validate, by its recommended rules: the content model of the HTML standard, and what breaks reading by ear.
const validator = new HtmlValidate({
  extends: ["html-validate:recommended"],
  rules: {
    // How the file is written, not what it says.
    "doctype-style": "off",
    "void-style": "off",
    "attribute-boolean-style": "off",
    "attribute-empty-style": "off",
    "no-trailing-whitespace": "off",
    "long-title": "off",
    // The script keeps to a hash in the file's own policy; there is no other file to ask.
    "require-sri": "off",
    "no-inline-style": "error",
  },
});

test.each([
  ["a small job", smallJob],
  ["sixty long steps", () => longJob(60)],
  ["hostile words", hostileJob],
])("the reader's file of %s is valid HTML", async (_, job) => {
  const { files } = await toHtml(checked(await job()), options());
  const report = await validator.validateString(new TextDecoder().decode(files[0]?.bytes));
  const messages = report.results.flatMap((one) => one.messages);
  expect(messages.map((one) => `${one.ruleId}: ${one.message} (line ${one.line}, ${one.selector})`)).toEqual(
    [],
  );
});
