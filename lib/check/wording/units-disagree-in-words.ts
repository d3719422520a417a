import { disagreement, read } from "#lib/quantity/index.ts";
import { passages } from "../passages.ts";
import type { Rule } from "../rule.ts";
import { about, below, fires, quoted, silent } from "./say.ts";

const pair =
  /(?:\d[\d.,/ -]*|[½¼¾⅛])\s*[\p{L}°µΩ"][\p{L}°· ]{0,8}\s*\(\s*(?:about\s+)?\d[\d.,/]*\s*[\p{L}°µΩ][\p{L}°· ]{0,8}\)/gu;

/** A value in an instruction, written in two units that do not say the same. */
export const unitsDisagreeInWords: Rule = {
  id: "units-disagree-in-words",
  title: "Two units, one value, in words",
  explanation:
    "Where a value is written in two units, one must be the other converted, within what rounding allows. A reader works to whichever of the two the tool in hand shows.",
  source: "NIST SP 811 (2008), appendix B: conversion factors and rounding",
  check: (view) =>
    passages(view).flatMap((passage) => {
      const wrong = (passage.text.match(pair) ?? []).flatMap((typed) => {
        const fault = disagreement(read(typed.trim(), { decimal: view.procedure.decimal }));
        return fault ? [{ typed: typed.trim(), ...fault }] : [];
      });
      const [first] = wrong;
      if (!first) return [];
      return about(passage, {
        rule: "units-disagree-in-words",
        severity: "wrong",
        evidence: wrong.map(({ typed }) => typed).join("\n"),
        found: `${quoted(passage, first.typed)}: ${first.found} is not the other one converted.`,
        expected: first.expected,
        todo: "Look at the source again, and correct the one that is wrong.",
        source: unitsDisagreeInWords.source,
      });
    }),
  examples: [
    ...fires(
      "Tighten the nuts to 12 lbf ft (163 N m).",
      "Turn the spindle down to 1/2 in (12.0 mm).",
      "Warm the case to 100 °C (312 °F).",
      "Pump the tyre to 30 psi (3.07 bar).",
    ),
    ...below(1, "First stage 2 lbf ft (27 N m), second stage 5 lbf ft (6.8 N m)."),
    ...silent(
      "Tighten the nuts to 12 lbf ft (16.3 N m).",
      "Turn the spindle down to 1/2 in (12.7 mm).",
      "Warm the case to 100 °C (212 °F).",
      "Fit two washers (steel, 1/16 in).",
    ),
    ...below(0, "First stage 2 lbf ft (2.7 N m), second stage 5 lbf ft (6.8 N m)."),
  ],
};
