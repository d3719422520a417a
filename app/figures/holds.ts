import type { Still } from "#lib/build/index.ts";
import type { FigureLines, Point } from "#lib/figure/index.ts";
import { figurePlace } from "./figure-lines.ts";
import type { InHand } from "./pointing.ts";

/** A part of the drawing that can be taken hold of. */
export type Held = Extract<InHand, { deed: "seat" | "target" | "end" }>;

/** Where the cross-hair begins: at what is to be moved. In fractions of the shown picture. */
export function startOf(hand: InHand, lines: FigureLines, still: Still): Point | null {
  if (hand.deed === "seat" || hand.deed === "target") {
    const balloon = lines.balloons.find((one) => one.id === hand.balloon);
    return balloon ? onPicture(lines, hand.deed === "seat" ? balloon.centre : balloon.dot.centre) : null;
  }
  if (hand.deed === "end") {
    const dimension = still.drawing.dimensions.find((one) => one.id === hand.dimension);
    return dimension ? onPicture(lines, figurePlace(lines, still, dimension[hand.end])) : null;
  }
  return null;
}

/** What lies near a place, to be named: numbers and what they point at. In fractions of the shown picture. */
export function thingsOn(lines: FigureLines, still: Still, name: (item: string) => string) {
  return lines.balloons.flatMap(({ id, number, centre, dot }) => {
    const item = still.drawing.balloons.find((one) => one.id === id)?.item;
    if (item === undefined) return [];
    return [
      { at: onPicture(lines, dot.centre), words: `what balloon ${number} points at, ${name(item)}` },
      { at: onPicture(lines, centre), words: `balloon ${number}, ${name(item)}` },
    ];
  });
}

/** What a pressed place takes hold of: a balloon, what it points at, an end of a dimension line. */
export function heldAt(
  at: Point,
  reach: number,
  lines: FigureLines,
  still: Still,
  name: (item: string) => string,
): Held | null {
  const { picture } = lines;
  const place = { x: picture.x + at.x * picture.width, y: picture.y + at.y * picture.height };
  const far = (other: Point) => Math.hypot(other.x - place.x, other.y - place.y);
  const itemOf = (id: string) => name(still.drawing.balloons.find((one) => one.id === id)?.item ?? "");
  const holds: { far: number; held: Held }[] = [
    ...lines.balloons.flatMap(({ id, centre, radius, dot }) => {
      const of = { balloon: id, name: itemOf(id) };
      return [
        { far: far(dot.centre), held: { deed: "target" as const, ...of } },
        { far: far(centre) - radius, held: { deed: "seat" as const, ...of } },
      ];
    }),
    ...still.drawing.dimensions.flatMap((one) =>
      (["from", "to"] as const).map((end) => ({
        far: far(figurePlace(lines, still, one[end])),
        held: { deed: "end" as const, dimension: one.id, name: "dimension line", end },
      })),
    ),
  ];
  const nearest = holds.sort((a, b) => a.far - b.far)[0];
  return nearest && nearest.far <= reach ? nearest.held : null;
}

function onPicture({ picture }: FigureLines, { x, y }: Point): Point {
  return { x: (x - picture.x) / picture.width, y: (y - picture.y) / picture.height };
}
