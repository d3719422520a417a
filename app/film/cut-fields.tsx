"use client";
import { useId } from "react";
import type { Cut } from "#lib/build/index.ts";
import type { Film } from "#lib/cut/index.ts";
import { publishedLink } from "#lib/procedure/index.ts";
import { writtenRates } from "#lib/time/index.ts";
import { useTyped } from "../log/typed.tsx";

export type PutCut = (label: string, set: Partial<Cut>) => void;

/** What a film is called, where it is published, and what its list does not say. */
export function CutFields({ film, put }: { film: Film; put: PutCut }) {
  const { row } = film;
  return (
    <div className="form">
      <Words label="Name" value={row.name} keep={(name) => put("Name of a film", { name })} />
      {row.form === "cmx3600" && <RateOf rate={row.rate} keep={(rate) => put("Rate of a film", { rate })} />}
      {row.form === "cmx3600" && (
        <Words
          label="Timecode of its first frame · else that of the first event"
          value={row.startsAt}
          placeholder="01:00:00:00"
          keep={(startsAt) => put("Beginning of a film", { startsAt })}
        />
      )}
      <Address value={row.publishedAt} put={put} />
    </div>
  );
}

/** The rates that timecode is counted at; a CMX3600 list does not say its own. */
export function RateOf({ rate, keep }: { rate: string; keep: (rate: string) => void }) {
  const id = useId();
  return (
    <div>
      <label htmlFor={id}>Frames a second · the list does not say them</label>
      <select id={id} value={rate} onChange={(event) => keep(event.target.value)}>
        <option value="">not said yet</option>
        {writtenRates.map((written) => (
          <option key={written} value={written}>
            {written}
          </option>
        ))}
        {rate !== "" && !writtenRates.includes(rate) && <option value={rate}>{rate}</option>}
      </select>
    </div>
  );
}

export function Words(props: {
  label: string;
  value: string;
  placeholder?: string;
  wide?: boolean;
  keep: (text: string) => void;
}) {
  const id = useId();
  const { text, change, flush } = useTyped(props.value, props.keep);
  return (
    <div className={props.wide ? "wide" : ""}>
      <label htmlFor={id}>{props.label}</label>
      <input
        id={id}
        value={text}
        placeholder={props.placeholder}
        autoComplete="off"
        onChange={(event) => change(event.target.value)}
        onBlur={flush}
      />
    </div>
  );
}

function Address({ value, put }: { value: string; put: PutCut }) {
  const wrong = value.trim() !== "" && publishedLink(value, 0) === null;
  return (
    <div className="wide">
      <Words
        label={"Address of the film, if it is published · {seconds} where the second goes, if it goes in"}
        value={value}
        placeholder="https://video.example.org/film?t={seconds}"
        keep={(publishedAt) => put("Address of a film", { publishedAt })}
      />
      {wrong && (
        <p className="finding">This is not an address that begins with https://; nothing leads to it.</p>
      )}
    </div>
  );
}
