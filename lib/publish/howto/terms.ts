/**
 * The types of schema.org that a HowTo is made of, with the properties of their own, as the typings of schema.org
 * (schema-dts 2.1.0) have them. `steps` is superseded by `step`.
 */
export const terms = {
  HowTo: {
    own: ["estimatedCost", "performTime", "prepTime", "step", "supply", "tool", "totalTime", "yield"],
    extends: ["CreativeWork"],
  },
  HowToSection: { own: [], extends: ["CreativeWork", "ItemList", "ListItem"], contains: ["HowToStep"] },
  HowToStep: {
    own: [],
    extends: ["CreativeWork", "ItemList", "ListItem"],
    contains: ["HowToDirection", "HowToTip"],
  },
  HowToDirection: {
    own: [
      "afterMedia",
      "beforeMedia",
      "duringMedia",
      "performTime",
      "prepTime",
      "supply",
      "tool",
      "totalTime",
    ],
    extends: ["CreativeWork", "ListItem"],
  },
  HowToTip: { own: [], extends: ["CreativeWork", "ListItem"] },
  HowToTool: { own: [], extends: ["HowToItem"] },
  HowToSupply: { own: ["estimatedCost"], extends: ["HowToItem"] },
  /** Offsets are in seconds from the start of the work. */
  Clip: { own: ["startOffset", "endOffset"], extends: ["CreativeWork"] },
  VideoObject: { own: [], extends: ["MediaObject"] },
  ImageObject: { own: ["caption"], extends: ["MediaObject"] },
  Product: { own: ["category"], extends: ["Thing"] },
} as const;

/** What those they extend have, as far as it is used here. */
const inherited = {
  Thing: ["name", "description", "url", "image"],
  CreativeWork: [
    "name",
    "description",
    "url",
    "image",
    "text",
    "video",
    "about",
    "inLanguage",
    "creativeWorkStatus",
  ],
  MediaObject: ["name", "description", "url", "contentUrl", "duration"],
  ItemList: ["itemListElement"],
  ListItem: ["position"],
  HowToItem: ["name", "description", "requiredQuantity", "position"],
} as const;

type Terms = typeof terms;
export type TypeName = keyof Terms;
type Property<T extends TypeName> =
  | Terms[T]["own"][number]
  | (typeof inherited)[Terms[T]["extends"][number]][number];

/** A node of that type; a property that the type does not have is an error of types. */
export function node<T extends TypeName>(type: T, properties: { [P in Property<T>]?: unknown }): Node {
  return { "@type": type, ...properties };
}

export interface Node {
  "@type": TypeName;
  [property: string]: unknown;
}
