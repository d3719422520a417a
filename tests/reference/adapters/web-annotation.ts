import { publishedLink } from "#lib/procedure/index.ts";
import { annotation, context, stretchOf } from "#lib/publish/annotations/forms.ts";
import type { Adapter } from "../row.ts";

const image = "http://example.org/image1";

/** The address that a selector comes to; and the example anno23 made with the forms that are written here. */
export const adapter: Adapter = ({ input }) => {
  if (input.rule === undefined) {
    const { value } = input.selector as { value: string };
    const [, start, end] = /^t=(\d+),(\d+)$/.exec(value) ?? [];
    return { iri: publishedLink(`${input.source}`, Number(start), Number(end)) };
  }
  const body = { ...stretchOf("http://example.org/video1", 30, 60), purpose: "describing" };
  const { type, target } = annotation("http://example.org/anno23", "describing", body, image);
  const fields = Object.keys(body).filter((field) => field !== "type");
  return { "@context": context, type, body_fields: fields, target };
};
