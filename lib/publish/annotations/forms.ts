import { mediaFragment } from "#lib/time/index.ts";

/** The forms of the W3C Web Annotation Data Model that are written. */
export type Node = Record<string, unknown>;

export const context = "http://www.w3.org/ns/anno.jsonld";
const mediaFragments = "http://www.w3.org/TR/media-frags/";

/** An annotation; on a page the context stands once, on the page. */
export function annotation(id: string, motivation: string, body: unknown, target: unknown): Node {
  return { id, type: "Annotation", motivation, body, target };
}

/** A stretch of a medium, in seconds (section 4.2.1, Fragment Selector). */
export function stretchOf(source: unknown, start: number, end: number): Node {
  const value = mediaFragment(start, end);
  return {
    type: "SpecificResource",
    source,
    selector: { type: "FragmentSelector", conformsTo: mediaFragments, value },
  };
}

/** Words said of what is annotated. */
export function words(value: string, purpose: "describing" | "tagging", more: Node = {}): Node {
  return { type: "TextualBody", value, purpose, ...more };
}
