import type { Stage } from "#lib/mark/index.ts";
import type { LedgerEvent } from "./events.ts";
import { fold } from "./fold.ts";
import type { Move } from "./pieces.ts";

/** A movement of pieces of an item, and the event it belongs to. */
export interface ItemMove extends Omit<Move, "reserve"> {
  item: string;
  event: LedgerEvent;
}

const beforeFitting = new Set<Stage>(["strip", "clean", "inspect", "repair"]);

/** The movements an event comes to; none for what leaves pieces where they are. */
export function movesOf(event: LedgerEvent, itemNamed: (name: string) => string): ItemMove[] {
  const { item, count, stage } = event;
  const common = { event, count, trial: stage === "trial fit", old: false };
  const own = (act: Move["act"]): ItemMove => ({ ...common, item, act });
  const old = (act: Move["act"]): ItemMove => ({
    ...common,
    old: true,
    item: event.says.insteadOf === "" ? item : itemNamed(fold(event.says.insteadOf)),
    act,
  });
  switch (event.event) {
    case "removed":
      return [own("off")];
    case "obtained":
      return [own("obtain")];
    case "made":
      return [own("make")];
    case "fitted":
      return event.says.insteadOf === "" ? [own("on")] : [old("leave"), own("on")];
    case "replaced":
      return [old("scrap"), own("new on")];
    case "substituted":
      return [old("leave"), own("new on")];
    case "left out":
      return [own("leave")];
    case "scrapped":
      // Before anything goes back on, what is scrapped is old.
      return [{ ...own("scrap"), old: beforeFitting.has(stage) }];
    default:
      return [];
  }
}
