import { type Fact, relatedFacts, type Sight } from "./sight.ts";

const driverName =
  /\b(?:driver|driving|drive|motor|engine|input|crank(?:shaft)?|pinion|worm|primary|prime mover|first|source|headstock|spindle gear|hand ?wheel|mandrel|great wheel|chainwheel|chainring|pedal|front|line ?shaft|main ?shaft|stud|from|flywheel|treadle|lay)\b/;

const drivenName =
  /\b(?:driven|output|counter ?shaft|wheel|lead ?screw|secondary|spindle|machine|final|pump|fan|dynamo|generator|alternator|cam(?:shaft)?|magneto|rear|sprocket|hub|blower|second|saw|lathe|mill|drill|to|feed|crown|balance|hour|last|lay ?shaft|escape|drum|load|table|compressor|governor|grinder|gearbox|saw bench|thresher|mixer|chopper|bevel|shaft)\b/;

interface Wheel {
  fact: Fact;
  role: "driver" | "driven";
}

/** The wheels among some values, by teeth or by diameter. */
export const wheelsIn = (facts: readonly Fact[], dimension: "count" | "length"): Fact[] =>
  facts.filter((fact) =>
    dimension === "count"
      ? isTeeth(fact)
      : fact.dimension === "length" &&
        /\b(?:pulley|sheave|wheel|drum|flywheel|driver|driven|roller|friction|disc|cone|step)\b/.test(
          fact.name,
        ) &&
        !/\b(?:width|face|bore|length|centre|center|thick|shaft dia|wheel ?base)\b/.test(fact.name),
  );

/** The driver and the driven wheel by teeth or by diameter. */
export function wheelsOf(
  facts: Fact[],
  dimension: "count" | "length",
): { driver: Fact; driven: Fact } | null {
  const wheels = wheelsIn(facts, dimension);
  const explicitDriver = wheels.find(
    (fact) =>
      /\b(?:driver|driving|input|motor|engine|pinion|worm(?! ?wheel))\b/.test(fact.name) &&
      !/\bdriven\b/.test(fact.name),
  );
  const explicitDriven = wheels.find((fact) => /\b(?:driven|output)\b/.test(fact.name));
  const driver =
    explicitDriver ?? wheels.find((fact) => fact !== explicitDriven && roleOf(fact.name) === "driver");
  const driven =
    explicitDriven ??
    wheels.find((fact) => fact !== driver && roleOf(fact.name) === "driven") ??
    (wheels.length === 2 ? wheels.find((fact) => fact !== driver) : undefined);
  return wheels.length === 2 && driver && driven && driver !== driven && driver.si > 0 && driven.si > 0
    ? { driver, driven }
    : null;
}

/** Whether a value is a count of teeth. */
export const isTeeth = (fact: Fact): boolean =>
  (fact.dimension === "count" &&
    /tooth|teeth|start|leaf|leaves|t\b/.test(
      `${fact.quantity.unit} ${fact.label} ${fact.raw.toLowerCase()}`,
    )) ||
  (fact.dimension === "number" &&
    /\b(?:teeth|tooth|gear|pinion|wheel|sprocket|worm|starts?|leaves|driver|driven|change ?wheel|chainwheel|lantern|stud|lead ?screw gear|mandrel)\b/.test(
      `${fact.name}`,
    ) &&
    !fact.quantity.terms &&
    !/\b(?:module|dp|diametral|pitch|ratio)\b/.test(fact.name));

/** Whether a wheel drives or is driven, by what it is called; null where nobody can say. */
export function roleOf(name: string): Wheel["role"] | null {
  if (/\bdriven\b/.test(name)) return "driven";
  if (
    /\b(?:driver|driving|motor|engine|input|pinion|worm(?! wheel))\b/.test(name) &&
    !/\bworm ?wheel\b/.test(name)
  )
    return "driver";
  if (
    drivenName.test(name) &&
    !/\bchain ?wheel|great wheel|flywheel|hand ?wheel|motor|engine|front|line ?shaft|stud|headstock\b/.test(
      name,
    )
  )
    return "driven";
  return driverName.test(name) ? "driver" : drivenName.test(name) ? "driven" : null;
}

/** Whether a value is a ratio. */
export const isRatio = (fact: Fact | null, name: string): boolean =>
  fact !== null &&
  (fact.quantity.terms !== undefined ||
    fact.dimension === "ratio" ||
    (fact.dimension === "number" && /\bratio|reduction\b/.test(name)));

/** A ratio as a number: 2.5:1 is 2.5. */
export const termsOf = ({ quantity }: Fact): number | null => {
  const [a = "0", b = "1"] = quantity.terms ?? [];
  const value = (text: string): number => {
    const [over = "0", under = "1"] = text.split("/");
    return Number(over) / Number(under);
  };
  return value(b) === 0 ? null : value(a) / value(b);
};

/** "Single start", "two-start": a count in words. */
export function startsInWords(sight: Sight): Fact[] {
  const [wheel] = relatedFacts(sight).filter(isTeeth);
  const words = (sight.entry.context.related ?? []).find((one) =>
    /\b(?:single|one|two|double|three|twin|four)[- ]start\b/i.test(`${one.text} ${one.what}`),
  );
  if (!wheel || !words || /\d/.test(words.text)) return [];
  const count = /\b(?:two|double|twin)\b/i.test(`${words.text} ${words.what}`)
    ? 2
    : /three/i.test(words.text)
      ? 3
      : /four/i.test(words.text)
        ? 4
        : 1;
  return [{ ...wheel, name: "worm", label: "worm starts", raw: words.text, si: count }];
}
