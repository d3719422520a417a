"use client";
import { useId } from "react";
import type { Scope } from "#lib/build/index.ts";
import { TextOf } from "./gotcha-sheet.tsx";

const words = [
  ["maker", "Maker"],
  ["model", "Model"],
  ["assembly", "Assembly"],
  ["item", "Part"],
  ["variant", "Variant"],
  ["kit", "Kit"],
] as const;

/** One place where a gotcha applies. What is left empty says nothing. */
export function ScopeFields({
  legend,
  scope,
  onChange,
  onTake,
}: {
  legend: string;
  scope: Scope;
  onChange: (scope: Scope) => void;
  onTake: () => void;
}) {
  const ids = { make: useId(), by: useId() };
  const { years, serial } = scope;
  return (
    <fieldset className="scope">
      <legend>{legend}</legend>
      <div className="form" style={{ maxWidth: "none" }}>
        {words.map(([name, label]) => (
          <TextOf
            key={name}
            line
            label={label}
            value={scope[name]}
            keep={(text) => onChange({ ...scope, [name]: text })}
          />
        ))}
        <TextOf
          line
          label="Years from"
          value={years.from}
          keep={(from) => onChange({ ...scope, years: { ...years, from } })}
        />
        <TextOf
          line
          label="Years to"
          value={years.to}
          keep={(to) => onChange({ ...scope, years: { ...years, to } })}
        />
        <TextOf
          line
          label="Serial from"
          value={serial.from}
          keep={(from) => onChange({ ...scope, serial: { ...serial, from } })}
        />
        <TextOf
          line
          label="Serial to"
          value={serial.to}
          keep={(to) => onChange({ ...scope, serial: { ...serial, to } })}
        />
        <div>
          <label htmlFor={ids.by}>Serials compare</label>
          <select
            id={ids.by}
            value={serial.by}
            onChange={(event) =>
              onChange({ ...scope, serial: { ...serial, by: event.target.value as "number" | "text" } })
            }
          >
            <option value="number">by number, within the same letters</option>
            <option value="text">as text</option>
          </select>
        </div>
        <div>
          <label htmlFor={ids.make}>Of parts that are</label>
          <select
            id={ids.make}
            value={scope.make}
            onChange={(event) => onChange({ ...scope, make: event.target.value as Scope["make"] })}
          >
            <option value="">either</option>
            <option value="original">original</option>
            <option value="reproduction">reproductions</option>
          </select>
        </div>
        <TextOf
          line
          label="Maker of the reproduction"
          value={scope.partMaker}
          keep={(partMaker) => onChange({ ...scope, partMaker })}
        />
        <div>
          <button type="button" className="plain" onClick={onTake}>
            Take this place out
          </button>
        </div>
      </div>
    </fieldset>
  );
}
