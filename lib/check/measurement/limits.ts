import type { Fact, Sight } from "./sight.ts";
import { growsWithWear, shrinksWithWear } from "./words.ts";

/** The least and the most that a specification or a limit allows, in SI units. */
export interface Given {
  fact: Fact;
  low: number | null;
  high: number | null;
  /** One figure without limits: values near it are in order. */
  nominal: boolean;
}

/** Related values that are limits of this one. */
const limitName =
  /\b(?:limits?|spec(?:ified|ification)?|max(?:imum)?|min(?:imum)?|allow(?:ed|able|ance)|permitted|permissible|tolerance|manual|handbook|book|maker'?s?|manufacturer'?s?|factory|nominal|should be|service limit|wear limit|data ?plate|on the plate|name ?plate|plate|catalogue|rated|rating|drawing|target|instruction (?:book|sheet)|workshop manual|published|data ?sheet|recommended|standard|correct|specification|design(?:ed)?|plate says|stamped|required|safe working)\b/;

/** What limits a value, of its specification, its limit and the related values. */
export function* limitsOf(sight: Sight, main: Fact): Generator<Given> {
  const candidates = sight.facts.filter(
    (fact) =>
      (fact.dimension === main.dimension && (fact.quantity.role ?? "") === (main.quantity.role ?? "")) ||
      (fact.dimension === "pressure" && main.dimension === "pressure"),
  );
  for (const fact of candidates.filter((one) => !isCondition(one, candidates) && !namesUnit(one))) {
    const about =
      fact.from === "spec" ||
      fact.from === "limit" ||
      (fact.from === "related" && limitName.test(fact.label) && sharesSubject(fact.name, sight));
    if (
      about &&
      !ofAnotherSize(fact, sight) &&
      !/\bnew\b|\bfor (?:a )?new\b|interval|wheel ?base/.test(fact.name)
    )
      yield given(sight, fact);
  }
}

const sizeWord =
  /\b(?:pitch|lead|width|length|thickness|diameter|bore|stroke|travel|depth|height|radius|clearance|gap)\b/;

/** "Four starts, 3 mm pitch" beside a lead: the specification names another size than was measured. */
function ofAnotherSize({ label, name, from }: Fact, { what }: Sight): boolean {
  const [named, own] = [sizeWord.exec(label.slice(name.length))?.[0], sizeWord.exec(what)?.[0]];
  return from === "spec" && named !== undefined && own !== undefined && !what.includes(named);
}

/** "±1 g at 1 kg": the second is where the first holds, and no limit itself. */
const isCondition = (fact: Fact, all: readonly Fact[]): boolean =>
  fact.from === "spec" &&
  /\bat (?!least|most)/i.test(fact.raw) &&
  all.some((one) => one.from === "spec" && one !== fact && all.indexOf(one) < all.indexOf(fact));

/** "Tons of 2,240 lb": what is meant by a unit, and no limit. */
const namesUnit = ({ raw }: Fact): boolean =>
  /^(?:long |short )?(?:tons?|cwts?|hundredweights?|gallons?|barrels?|bushels?) of \d/i.test(raw);

const limitNames = new RegExp(limitName.source, "g");

/** A limit by a name of its own ("bore limit") must name what is measured; a bare "limit" always does. */
function sharesSubject(name: string, { what, part, main }: Sight): boolean {
  if (/\bworking (?:load|pressure)\b|\bs\.?w\.?l\b/.test(name))
    return !/\b(?:test(?:ed)?|proof|burst\w*)\b/.test(what);
  if (main?.dimension === "angle" || main?.dimension === "count") return true;
  const rest = name
    .replace(limitNames, "")
    .replace(
      /\b(?:the|for|of|loss|lost|wasting|wear|service|by|in|value|figure|says|from|'s|s|setting|range|is|as|upper|lower|working)\b|[^a-z ]/g,
      " ",
    )
    .trim();
  if (rest === "") return true;
  return rest
    .split(/\s+/)
    .some(
      (word) => word.length > 2 && `${what} ${part}`.includes(word.slice(0, Math.max(4, word.length - 2))),
    );
}

const discarded =
  /\b(?:scrap|renew|replace|discard|reject|change|condemn|throw (?:out|away)|withdraw|re-?bush|rebore|regrind|re-?line|take out of service)\b(?: it)?(?: when| if| once| at| it is| it falls| it gets| it reaches| anything| all)* (below|under|less than|thinner than|shorter than|down to|smaller than|above|over|beyond|past|more than|longer than|thicker than|exceeding)\b/;

/** "Scrap above", "renew under": where a part is past its limit, and no longer good. */
function pastWhich(place: string): "above" | "below" | null {
  const word = discarded.exec(place)?.[1];
  if (!word) return null;
  return /^(?:above|over|beyond|past|more|longer|thicker|exceeding)/.test(word) ? "above" : "below";
}

/** What one value allows as a limit, from its words: a least, a most, both, or a size to be near. */
export function given({ what }: Sight, fact: Fact): Given {
  const { label, quantity } = fact;
  const place = `${label} ${fact.raw.toLowerCase()}`;
  const past = quantity.high ? null : pastWhich(place);
  if (past)
    return {
      fact,
      low: past === "below" ? fact.si : null,
      high: past === "above" ? fact.si : null,
      nominal: false,
    };
  const single = quantity.qualifier === "exact" && !quantity.tolerance && !quantity.high;
  if (!single)
    return {
      fact,
      low: fact.low,
      high: fact.high,
      nominal: quantity.qualifier === "about" || quantity.tolerance?.kind === "class",
    };
  // What is called a safe working load is one, and no less than the plate says.
  if (fact.from === "spec" && /\b(?:safe working|rated|rating)\b/.test(what))
    return { fact, low: fact.low, high: fact.high, nominal: true };
  const least =
    /\b(?:min(?:imum)?|at least|(?:not|never|no) (?:less|under|below|thinner|shorter|smaller|lower)|or (?:more|above|over|higher|longer|thicker)|and (?:over|above|up|upwards)|lowest|lower limit)\b/.test(
      place,
    );
  const most =
    /\b(?:max(?:imum)?|at most|(?:not|never|no) (?:to )?(?:more|over|above|beyond|longer|thicker|larger|exceed(?:ing)?)|up to|within|or (?:less|below|under|lower|shorter|thinner)|highest|upper limit|safe working|rated|permissible|allow(?:ed|able)|and (?:under|below))\b/.test(
      place,
    );
  if (least) return { fact, low: fact.si, high: null, nominal: false };
  if (most) return { fact, low: null, high: fact.si, nominal: false };
  if (fact.from === "limit" || /\blimit\b/.test(place.replace(what, ""))) {
    const down = shrinksWithWear.test(what) && !growsWithWear.test(what);
    return { fact, low: down ? fact.si : null, high: down ? null : fact.si, nominal: false };
  }
  return { fact, low: fact.low, high: fact.high, nominal: true };
}
