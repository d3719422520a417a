"use client";
import { toJsxRuntime } from "hast-util-to-jsx-runtime";
import { useMemo } from "react";
import { Fragment, jsx, jsxs } from "react/jsx-runtime";
import { drawnOn, type FigureLines } from "#lib/figure/index.ts";

/** Balloons and dimension lines, by the same geometry that every output draws. */
export function DrawnLines({ lines }: { lines: FigureLines }) {
  const drawn = useMemo(
    () => toJsxRuntime({ type: "root", children: drawnOn(lines) }, { Fragment, jsx, jsxs, space: "svg" }),
    [lines],
  );
  return <g className="drawn">{drawn}</g>;
}
