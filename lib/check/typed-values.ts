import { kindOf, type Mark, typedOf } from "#lib/mark/index.ts";

/** A value as the restorer typed it, and where. */
export interface TypedPlace {
  mark: string;
  field: string;
  label: string;
  typed: string;
}

/** Every value typed into a field for quantities, in the order of marks and fields. */
export function typedValues(marks: ReadonlyMap<string, Mark>): TypedPlace[] {
  return [...marks.values()].flatMap((mark) =>
    kindOf(mark.kind)
      .fields.filter((field) => field.form === "quantity")
      .map(({ name, label }) => ({ mark: mark.id, field: name, label, typed: typedOf(mark, name) }))
      .filter((value) => value.typed !== ""),
  );
}
