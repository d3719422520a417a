"use client";
import type { FigureLines } from "#lib/figure/index.ts";

export function DrawnLines({ lines }: { lines: FigureLines }) {
  return (
    <g>
      {lines.balloons.map(({ id, number, centre, radius, leader, dot }) => (
        <g key={id} data-balloon={id}>
          <path
            d={`M${leader.from.x} ${leader.from.y}L${leader.to.x} ${leader.to.y}`}
            stroke="currentColor"
          />
          <circle cx={dot.centre.x} cy={dot.centre.y} r={dot.radius} />
          <circle cx={centre.x} cy={centre.y} r={radius} fill="white" stroke="black" />
          <text x={centre.x} y={centre.y + lines.text * 0.35} fontSize={lines.text} textAnchor="middle">
            {number}
          </text>
        </g>
      ))}
      {lines.dimensions.map(({ id, line, text, textAt }) => (
        <g key={id} data-dimension={id}>
          <path d={`M${line.from.x} ${line.from.y}L${line.to.x} ${line.to.y}`} stroke="black" />
          <text x={textAt.x} y={textAt.y} fontSize={lines.text} textAnchor="middle">
            {text}
          </text>
        </g>
      ))}
    </g>
  );
}
