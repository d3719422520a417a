import { near, sayIn } from "../figures.ts";
import type { EntryRule, Remark } from "../rule.ts";
import type { Fact, Sight } from "../sight.ts";

/** Radius, diameter, circumference and stroke of one round thing. */
export const roundSizes: EntryRule = {
  id: "round-sizes",
  title: "Radius, diameter and circumference",
  explanation:
    "A diameter is two radii, a stroke two throws, and round a thing it is π times its diameter. The one is easily written for the other.",
  source: "geometry",
  check: (sight) => circle(sight),
  examples: [
    {
      says: "a stroke is two throws",
      entry: {
        text: "25 mm",
        what: "stroke",
        context: { related: [{ what: "crank radius", text: "25 mm" }] },
      },
      finds: 1,
    },
    {
      says: "as here",
      entry: {
        text: "50 mm",
        what: "stroke",
        context: { related: [{ what: "crank radius", text: "25 mm" }] },
      },
      finds: 0,
    },
  ],
};

/** Diameter, radius and circumference; chord and diameter. */
function circle(sight: Sight): Remark[] {
  const { main, facts } = sight;
  if (
    main?.dimension !== "length" ||
    !/\b(?:radius|circumference|round the|girth|throw|stroke|offset|eccentricity)\b/.test(
      facts.map((fact) => fact.label).join(" "),
    )
  )
    return [];
  const find = (name: RegExp, not?: RegExp) =>
    facts.find(
      (fact) =>
        fact.dimension === "length" &&
        fact.from !== "limit" &&
        name.test(fact.label) &&
        !not?.test(fact.label),
    );
  const [diameter, radius, round] = [
    find(/\bdia(?:meter)?\b/, /radius|circum|round the|girth|all round|right round/),
    find(/\bradius\b|\bcrank throw\b/, /corner|fillet|nose|ball|edge|bend/),
    find(/\bcircumference\b|\bround the\b|\bgirth\b|\b(?:all|right) round\b/),
  ];
  if (round && diameter && diameter !== round && !near(round.si, Math.PI * diameter.si, 0.02))
    return [
      {
        severity: "wrong",
        found: `${round.name} ${round.raw}, ${diameter.name} ${diameter.raw}.`,
        expected: `${sayIn(Math.PI * diameter.si, round.quantity, 4)} round.`,
        meant: near(round.si, 2 * Math.PI * diameter.si, 0.02)
          ? "radius taken for diameter?"
          : `${sayIn(Math.PI * diameter.si, round.quantity, 4)}?`,
      },
    ];
  const [stroke, throwOf] = [
    find(/\bstroke\b/),
    find(/\b(?:throw|crank radius|crank throw|offset|eccentricity)\b/),
  ];
  if (
    stroke &&
    throwOf &&
    stroke !== throwOf &&
    (main === stroke || main === throwOf) &&
    !near(stroke.si, 2 * throwOf.si, 0.015)
  )
    return [
      {
        severity: "wrong",
        found: `${stroke.name} ${stroke.raw}, ${throwOf.name} ${throwOf.raw}.`,
        expected: `A stroke of ${sayIn(2 * throwOf.si, stroke.quantity)}: twice the throw.`,
      },
    ];
  if (
    radius &&
    diameter &&
    radius !== diameter &&
    (main === radius || main === diameter) &&
    nouns(radius, diameter) &&
    !near(diameter.si, 2 * radius.si, 0.015)
  )
    return [
      {
        severity: "wrong",
        found: `${radius.name} ${radius.raw}, ${diameter.name} ${diameter.raw}.`,
        expected: `A radius of ${sayIn(diameter.si / 2, radius.quantity)}.`,
      },
    ];
  return [];
}

const nouns = (a: Fact, b: Fact): boolean => {
  const strip = (name: string): string[] => name.match(/\b(?!radius|diameter|dia|the|of)[a-z]{2,}\b/g) ?? [];
  const [one, other] = [strip(a.name), strip(b.name)];
  return (
    one.length === 0 ||
    other.length === 0 ||
    one.every((word) => other.includes(word)) ||
    other.every((word) => one.includes(word))
  );
};
