import { type TypeName, terms } from "#lib/publish/howto/terms.ts";
import type { Adapter } from "../row.ts";

/** The types that a HowTo is written with; a property that a type does not have is an error of types there. */
export const adapter: Adapter = ({ input }) => {
  const type = terms[input.type as TypeName];
  if (input.property !== undefined) {
    const has = (type.own as readonly string[]).includes(`${input.property}`);
    return has ? { unit: "seconds from the start of the work" } : {};
  }
  return {
    own_properties: [...type.own],
    extends: [...type.extends],
    ...("contains" in type && { contains: [...type.contains] }),
  };
};
