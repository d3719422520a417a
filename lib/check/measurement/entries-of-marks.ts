import { type CharacteristicValue, characteristicValues, typedOf, wordsOf } from "#lib/mark/index.ts";
import { type Beside, sameCharacteristic } from "./beside.ts";
import type { Entry, EntryContext } from "./entry.ts";

/** An entry, and the value of a measurement mark that it stands for. */
export interface MarkEntry {
  mark: string;
  field: CharacteristicValue;
  item: string;
  entry: Entry;
}

/** The values of a measurement mark as entries, each with what the build knows beside it. */
export function entriesOf(beside: Beside): MarkEntry[] {
  const { mark, item } = beside;
  const related = relatedOf(beside);
  return characteristicValues
    .filter((field) => typedOf(mark, field) !== "")
    .map((field) => ({
      mark: mark.id,
      field,
      item,
      entry: {
        id: mark.id,
        text: typedOf(mark, field),
        what: wordsOf(mark),
        context: contextOf(beside, field, related),
      },
    }));
}

type Related = NonNullable<EntryContext["related"]>;

/** What was specified is looked at by itself; what was measured, beside all the rest. */
function contextOf(beside: Beside, field: CharacteristicValue, related: Related): EntryContext {
  const { mark } = beside;
  const measured = field === "asFound" || field === "asFitted";
  const known = {
    part: wordsOf(mark, "item"),
    material: lastOf(beside, "material"),
    fastener: lastOf(beside, "size"),
    instrument: measured ? wordsOf(mark, "instrument") : "",
    spec: measured ? typedOf(mark, "specified") : "",
    limit: measured ? typedOf(mark, "limit") : "",
    verdict: verdictOf(beside, field),
  };
  const filled = Object.fromEntries(Object.entries(known).filter(([, words]) => words !== ""));
  return { ...filled, ...(measured && related.length > 0 && { related }) };
}

const lastOf = ({ parts }: Beside, name: string): string =>
  parts.map((part) => wordsOf(part, name)).findLast((words) => words !== "") ?? "";

/** What was found and put right later needs no verdict of its own: as found is not the same as right. */
function verdictOf({ mark, putRight }: Beside, field: CharacteristicValue): string {
  return [wordsOf(mark, "note"), field === "asFound" && putRight ? "renewed" : ""].filter(Boolean).join("; ");
}

/** The other measurements of the part, and those of its mate with its name, each by its surest value. */
function relatedOf({ mark, others }: Beside): Related {
  return others
    .filter((other) => !sameCharacteristic(other, mark))
    .flatMap((other) => {
      const field = (["asFitted", "asFound", "specified"] as const).find(
        (name) => typedOf(other, name) !== "",
      );
      const mate = wordsOf(other, "item") !== wordsOf(mark, "item") ? wordsOf(other, "item") : "";
      const what = [mate, wordsOf(other)].filter(Boolean).join(" ");
      return field ? [{ what, text: typedOf(other, field) }] : [];
    });
}
