import { kinds } from "#lib/mark/index.ts";
import type { Settings } from "#lib/store/settings.ts";

/** What a single key can do on the log sheet. */
export interface Deed {
  name: string;
  /** What it does, for the list of keys. */
  words: string;
  /** The usual key, as KeyboardEvent.key says it. */
  key: string;
  /** Whether holding the key down repeats it. Marks never repeat. */
  repeats?: true;
}

const kindDeeds: Deed[] = kinds
  .filter((kind) => kind.kind !== "")
  .map((kind) => ({ name: kind.kind, words: kind.word.toLowerCase(), key: kind.key }));

/** All deeds, in the order of the list of keys. */
export const deeds: readonly Deed[] = [
  { name: "mark", words: "mark, sort it later", key: " " },
  ...kindDeeds,
  { name: "still", words: "take the still", key: "f" },
  { name: "sharpest still", words: "take the sharpest frame near", key: "F" },
  { name: "run", words: "run, or hold", key: "r" },
  { name: "frame back", words: "one frame back", key: "ArrowLeft", repeats: true },
  { name: "frame on", words: "one frame on", key: "ArrowRight", repeats: true },
  { name: "slower", words: "slower", key: "-" },
  { name: "faster", words: "faster", key: "+" },
  { name: "mark above", words: "mark above", key: "ArrowUp", repeats: true },
  { name: "mark below", words: "mark below", key: "ArrowDown", repeats: true },
  { name: "write", words: "write in the row in hand", key: "Enter" },
  { name: "here", words: "move the mark to this frame", key: "h" },
  { name: "strike out", words: "strike the mark out", key: "Delete" },
  { name: "accept", words: "accept the draft", key: "a" },
  { name: "drop", words: "drop the draft", key: "x" },
  { name: "hear", words: "hear the sentence again", key: "e" },
  { name: "next draft", words: "next draft", key: ".", repeats: true },
  { name: "draft before", words: "draft before", key: ",", repeats: true },
  { name: "accept certain", words: "accept all of its kind that are certain", key: "A" },
  { name: "happened", words: "brief: it happened", key: "1" },
  { name: "avoided", words: "brief: avoided", key: "2" },
  { name: "absent", words: "brief: looked, absent", key: "3" },
  { name: "not applicable", words: "brief: not applicable", key: "4" },
  { name: "undo", words: "undo", key: "u" },
  { name: "redo", words: "redo", key: "U" },
];

/** The key of each deed as the restorer has set it. */
export function keysOf(settings: Settings): Map<string, string> {
  return new Map(deeds.map((deed) => [deed.name, settings.keys[deed.name] ?? deed.key]));
}

/** The deed that a key press asks for; null for none. Keys held with Ctrl, Alt or Meta are the browser's. */
export function deedOf(event: KeyboardEvent, settings: Settings): Deed | null {
  if (event.ctrlKey || event.altKey || event.metaKey || !settings.singleKeys) return null;
  const keys = keysOf(settings);
  const deed = deeds.find((one) => keys.get(one.name) === event.key);
  return deed && (!event.repeat || deed.repeats) ? deed : null;
}

/** A key as it is printed: "space", "←", "S". */
export function sayKey(key: string): string {
  const names: Record<string, string> = {
    " ": "space",
    ArrowLeft: "←",
    ArrowRight: "→",
    ArrowUp: "↑",
    ArrowDown: "↓",
    Enter: "enter",
    Delete: "delete",
    Escape: "esc",
  };
  return names[key] ?? (key.length === 1 && key !== key.toLowerCase() ? `shift ${key.toLowerCase()}` : key);
}

/** Whether a key press belongs to what has the focus (a field, a button) rather than to the sheet. */
export function belongsToFocus(event: KeyboardEvent): boolean {
  const target = event.target;
  if (!(target instanceof HTMLElement)) return false;
  if (target.isContentEditable || /^(INPUT|TEXTAREA|SELECT)$/.test(target.tagName)) return true;
  const pressed = /^(BUTTON|A|SUMMARY|OPTION)$/.test(target.tagName);
  return pressed && (event.key === " " || event.key === "Enter");
}
