"use client";
import { useId } from "react";
import { useTyped } from "../log/typed.tsx";

/** A number that is typed, or moved with the arrow keys; kept after a pause. What is no number in the range is not kept. */
export function NumberField({
  label,
  of,
  value,
  least,
  most,
  step,
  keep,
}: {
  label: string;
  /** What it speaks of, for who does not see the row it stands in. */
  of?: string;
  value: number;
  least: number;
  most: number;
  step: number;
  keep: (value: number) => void;
}) {
  const id = useId();
  const inRange = (text: string) => text.trim() !== "" && Number(text) >= least && Number(text) <= most;
  const { text, change, flush } = useTyped(String(value), (typed) => {
    if (inRange(typed) && Number(typed) !== value) keep(Number(typed));
  });
  const wrong = !inRange(text);
  return (
    <div className="number-field">
      <label htmlFor={id}>
        {label}
        {of !== undefined && <span className="hidden-words">: {of}</span>}
      </label>
      <input
        id={id}
        type="number"
        inputMode="decimal"
        min={least}
        max={most}
        step={step}
        value={text}
        aria-invalid={wrong}
        aria-describedby={wrong ? `${id}-range` : undefined}
        onChange={(event) => change(event.target.value)}
        onBlur={flush}
      />
      {wrong && (
        <p className="small" id={`${id}-range`} role="status">
          A number from {least} to {most} was expected; the drawing is as it was.
        </p>
      )}
    </div>
  );
}
