import { characteristicValues, kindOf, type Mark, typedOf } from "#lib/mark/index.ts";

/** A value as the restorer typed it, and where. */
export interface TypedPlace {
  mark: string;
  field: string;
  label: string;
  typed: string;
}

/** Every value typed into a measurement, in the order of marks and fields. */
export function typedValues(marks: ReadonlyMap<string, Mark>): TypedPlace[] {
  return [...marks.values()]
    .filter((mark) => mark.kind === "measurement")
    .flatMap((mark) =>
      characteristicValues
        .map((field) => ({ mark: mark.id, field, label: labelOf(field), typed: typedOf(mark, field) }))
        .filter((value) => value.typed !== ""),
    );
}

function labelOf(name: string): string {
  return kindOf("measurement").fields.find((field) => field.name === name)?.label ?? name;
}
