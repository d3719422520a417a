"use client";
import { toJsxRuntime } from "hast-util-to-jsx-runtime";
import { useMemo } from "react";
import { Fragment, jsx, jsxs } from "react/jsx-runtime";
import type { Still } from "#lib/build/index.ts";
import { type FigureLines, svgOf } from "#lib/figure/index.ts";
import { stillAddress } from "../log/stills.tsx";

/** The picture and what is drawn on it, by the same geometry that every output draws. Stands in an SVG of its size. */
export function FigureDrawing({ still, lines }: { still: Still; lines: FigureLines }) {
  const { sha256, width, height } = still;
  return useMemo(() => {
    const { children } = svgOf(lines, { address: stillAddress(sha256), is: "original", width, height });
    return (
      <g className="drawn">
        {toJsxRuntime({ type: "root", children }, { Fragment, jsx, jsxs, space: "svg" })}
      </g>
    );
  }, [lines, sha256, width, height]);
}
