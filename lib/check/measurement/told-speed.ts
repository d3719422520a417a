import { near, numberIn, plain } from "./figures.ts";
import type { Remark } from "./rule.ts";
import type { Fact } from "./sight.ts";

/** "Turns 3 times as fast", "half the speed": the driven wheel's speed over the driver's. */
export function faster(text: string, { driver, driven }: { driver: Fact; driven: Fact }): number | null {
  const words: Record<string, number> = {
    twice: 2,
    double: 2,
    doubles: 2,
    doubled: 2,
    thrice: 3,
    triples: 3,
    trebles: 3,
    half: 0.5,
    third: 1 / 3,
    quarter: 0.25,
    fifth: 0.2,
    sixth: 1 / 6,
    tenth: 0.1,
  };
  const [head = ""] = text.split(/\bturns?\b|\bruns?\b|\brotates?\b|\bgoes\b|\bspins?\b|\bis\b/);
  const names = (name: string, other: string) =>
    (name.match(/[a-z]{3,}/g) ?? []).filter(
      (word) => !other.includes(word) && !/^(?:driven|driver|driving|pulley|wheel|gear|teeth)$/.test(word),
    );
  const isDriven =
    names(driven.name, driver.name).some((word) => head.includes(word)) || /\b(?:driven|output)\b/.test(head);
  const isDriver = names(driver.name, driven.name).some((word) => head.includes(word));
  const subject = isDriven
    ? false
    : isDriver
      ? true
      : /\b(?:driver|motor|engine|pinion|input|crank(?:shaft)?)\b/.exec(head) !== null &&
        !/\bdriven|output\b/.test(text);
  const many =
    /(\d+(?:\.\d+)?|two|three|four|five|six|eight|ten|twelve) ?(?:times|x|turns|revolutions|revs)/.exec(text);
  const count = many
    ? numberIn(many[1] ?? "")
    : words[/\b(twice|doubles?|doubled|thrice|triples|trebles)\b/.exec(text)?.[1] ?? ""];
  const part = /\b(?:1\/(\d+)|(?:a |one[- ])?(half|third|quarter|fifth|sixth|tenth))\b/.exec(
    text.replace(/\bhalve[sd]\b/, "half"),
  );
  const fast =
    /\bfor (?:each|every|one|a)\b|\bfast(?:er)?|speed(?:s)? up|steps? up|quicker|\bspeed\b|as quick/.test(
      text,
    );
  const slow = /\bslow(?:er)?|slows|reduced|steps? down/.test(text);
  let value: number | null = null;
  if (part && (fast || slow)) value = part[1] ? 1 / Number(part[1]) : (words[part[2] ?? ""] ?? null);
  else if (count && slow) value = 1 / count;
  else if (count && fast) value = count;
  else if (/\bfaster\b|speeds? up|steps? up/.test(text)) value = Number.POSITIVE_INFINITY;
  else if (/\bslower\b|slows? down|steps? down/.test(text)) value = 0;
  if (value === null) return null;
  if (subject) return value === 0 ? Number.POSITIVE_INFINITY : 1 / value;
  return value;
}

/** What is told of two wheels against their ratio. */
export function toldApart(told: number, ratio: number, words: string): Remark[] {
  const speed = 1 / ratio;
  const agrees =
    told === 0 ? speed < 1 : told === Number.POSITIVE_INFINITY ? speed > 1 : near(told, speed, 0.05);
  if (agrees) return [];
  return [
    {
      severity: "wrong",
      found: `${words}: the driven one is said to turn ${told === 0 ? "slower" : told === Number.POSITIVE_INFINITY ? "faster" : `${plain(told, 3)} times as fast`}.`,
      expected: `It turns ${plain(speed, 3)} times as fast as the driver.`,
      meant: near(told, ratio, 0.05) ? "the ratio turned about?" : `${plain(speed, 3)} times?`,
    },
  ];
}
