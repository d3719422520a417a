import fs from "node:fs";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { signalWord } from "#lib/mark/index.ts";
import { cautionsFor, statements, substances, usualCautions } from "#lib/reference/hazards/index.ts";

/** Official wording, and what suppliers usually say of a substance; each row names its source and how it was seen. */
interface Wording {
  statements: { code: string; text: string }[];
  substances: { name: string; ghs_signal_word: string; hazard_codes: string[]; precaution_codes: string[] }[];
}
const file = path.join(import.meta.dirname, "data", "hazard-wording.json");
const wording = JSON.parse(fs.readFileSync(file, "utf8")) as Wording;

const names = (text: string, warned: string[] = []) => cautionsFor(text, warned).map(({ name }) => name);
const wordOf = ({ harms, severity, likelihood }: (typeof usualCautions)[number]) =>
  signalWord({ v: 1, harms, severity, likelihood });

describe("official statements", () => {
  test("stand to the letter", () => {
    const official = new Map(wording.statements.map(({ code, text }) => [code, text]));
    for (const [code, text] of Object.entries(statements)) expect(text, code).toBe(official.get(code));
  });

  test("go with the substances that suppliers put them on", () => {
    const lists = (hazards: readonly string[], precautions: readonly string[]) =>
      [...hazards, "|", ...precautions].join(" ");
    const usual = wording.substances.map((one) => lists(one.hazard_codes, one.precaution_codes));
    expect(substances.map((one) => lists(one.hazards, one.precautions))).toEqual(usual);
    expect(substances.map(({ label }) => label)).toEqual(
      wording.substances.map((one) => one.ghs_signal_word),
    );
  });

  test("are not printed raw where a writer has to pick or complete", () => {
    for (const { avoid, consequence } of usualCautions) {
      expect(avoid).not.toMatch(/\.\.\.|[<>[\]]|\w\/[a-z]/i);
      expect(consequence).not.toMatch(/[<>]/);
    }
  });
});

describe("usual cautions", () => {
  // ANSI Z535.6, from public summaries: severity first, then certainty. GHS chooses its words by other rules.
  test("take a signal word that is never milder than the label of the substance", () => {
    for (const { name, label } of substances) {
      const word = wordOf(usualCautions.find((one) => one.name === name) as (typeof usualCautions)[number]);
      expect(label === "Danger" ? ["DANGER", "WARNING"] : ["DANGER", "WARNING", "CAUTION"], name).toContain(
        word,
      );
    }
    for (const caution of usualCautions) expect(wordOf(caution), caution.name).not.toBeNull();
  });

  test("have a hazard, a consequence, a way out and a source, and call nothing safe", () => {
    for (const one of usualCautions) {
      for (const text of [one.hazard, one.consequence, one.avoid, one.source])
        expect(text.trim()).not.toBe("");
      expect([one.hazard, one.consequence, one.avoid, one.defer].join(" ")).not.toMatch(
        /\b(?:safe|safely|harmless)\b/i,
      );
    }
  });

  test("name no figure where the work belongs to licensed practice, and say that it does", () => {
    const deferred = usualCautions.filter(({ defer }) => defer !== undefined);
    for (const word of [
      "Pressure",
      "Asbestos",
      "Fuel gas and refrigerant",
      "Brakes and steering",
      "Mains and capacitors",
    ])
      expect(deferred.map(({ name }) => name)).toContain(word);
    for (const { name, avoid, defer } of deferred) {
      expect(avoid, name).not.toMatch(/\d/);
      expect(defer).toMatch(/licen[cs]ed|competent|specialist|local/i);
    }
  });

  test("speak of themselves: who has one is not offered it again", () => {
    for (const { name, hazard, avoid, said } of usualCautions)
      expect(`${hazard} ${avoid}`, name).toMatch(said);
  });
});

describe("words that leave no doubt", () => {
  const certain = (text: string) =>
    usualCautions.filter(({ needed }) => needed?.test(text)).map(({ name }) => name);

  test.each([
    ["Wipe the bore with acetone", "Acetone"],
    ["Pour the battery acid off", "Sulphuric acid"],
    ["Boil the case in caustic soda", "Caustic soda"],
    ["Peel off the old lagging", "Asbestos"],
    ["Let down the spring of the motor", "Springs and other stored energy"],
    ["Prove the reservoir capacitor", "Mains and capacitors"],
    ["Loosen the cap while it is under pressure", "Pressure"],
    ["Lower the head with the hoist", "Raised loads"],
    ["Start the engine", "Rotating parts and the first run"],
    ["Scrape the radium off the hand", "Radium dial"],
    ["Open the gas supply", "Fuel gas and refrigerant"],
  ])("ask for a caution, which the log offers: %s", (text, name) => {
    expect(certain(text)).toEqual([name]);
    expect(names(text)).toContain(name);
  });

  // The log offers a caution for each of these; that one is needed, the restorer alone can tell.
  test.each([
    "Unhook the carriage spring",
    "Take the brake shoes off",
    "Peel the old gasket off",
    "Give the nut some penetrating spray",
    "Clean the hoist",
    "Turn the lathe by hand",
    "Dip it in citric acid",
  ])("and not for %s", (text) => {
    expect(certain(text)).toEqual([]);
    expect(names(text).length).toBeGreaterThan(0);
  });
});

describe("a step that meets a hazard", () => {
  test.each([
    ["Wash the body out with petrol", ["Petrol"]],
    ["Degrease the bore with white spirit on a cloth", ["White spirit, paraffin and the like"]],
    ["Pickle it in phosphoric acid overnight", ["Phosphoric acid"]],
    ["Lift the old brake linings off", ["Asbestos", "Brakes and steering"]],
    ["Compress the valve spring", ["Springs and other stored energy"]],
    ["Short the smoothing capacitor", ["Mains and capacitors"]],
    ["Loosen the union of the air receiver", ["Pressure"]],
    ["Blow the jets out with compressed air", ["Compressed air"]],
    ["Braze the seam of the fuel tank", ["Hot work on a tank or drum"]],
    ["Set the timing, then the first run", ["Rotating parts and the first run"]],
    ["Lower the engine with the hoist", ["Raised loads"]],
    ["Sand the red lead back", ["Lead and lead paint"]],
  ])("%s", (text, expected) => {
    expect(names(text)).toEqual(expected);
  });

  test.each([
    "Put the spring washer under the nut",
    "Drive the spring pin out",
    "Unscrew the four cover nuts in a cross, half a turn at a time",
    "Draw the impeller off its key with the two jacking screws",
    "Wipe it dry, no compressed air",
    "Clean it without petrol",
    "Lead the cable through the gland",
    "Solder the wire to the tag",
    "",
  ])("and one that meets none: %s", (text) => {
    expect(names(text)).toEqual([]);
  });

  test("is not offered what its caution already says", () => {
    expect(names("Wash it in petrol", ["Petrol vapour is heavier than air"])).toEqual([]);
    expect(names("Wash it in petrol", ["The edge is sharp"])).toEqual(["Petrol"]);
  });
});
