"use client";
import type { Film } from "#lib/cut/index.ts";
import { toNumber } from "#lib/rational/index.ts";
import { type PlacedSegment, sayMoment, timecode } from "#lib/time/index.ts";
import { useSessionView } from "../session/provider.tsx";

/** More are not listed: the list itself has them. */
const most = 300;

/** What stands where in the film, as it was understood. */
export function Stretches({ film }: { film: Film }) {
  const { document } = useSessionView();
  const { segments, duration } = film.cut;
  if (segments.length === 0)
    return <p className="soft">Nothing of this build's recordings stands in it yet.</p>;
  const names = new Map(document.recordings.map(({ id, name }) => [id, name]));
  const count = segments.length === 1 ? "One stretch" : `${segments.length} stretches`;
  return (
    <details className="stretches">
      <summary>
        {count} in {sayMoment(toNumber(duration))} of film{film.rate && ` at ${film.rate} frames a second`}
      </summary>
      <table>
        <thead>
          <tr>
            <th scope="col">Film</th>
            <th scope="col">Recording</th>
            <th scope="col">From</th>
            <th scope="col">Speed</th>
          </tr>
        </thead>
        <tbody>
          {segments.slice(0, most).map((segment) => (
            <tr key={keyOf(segment)}>
              <td className="num">
                {timecode(toNumber(segment.start))} to {timecode(toNumber(segment.end))}
              </td>
              <td>{names.get(segment.source) ?? "unknown"}</td>
              <td className="num">{timecode(toNumber(segment.from))}</td>
              <td>{speedSaid(toNumber(segment.speed))}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {segments.length > most && <p className="soft">And {segments.length - most} more.</p>}
    </details>
  );
}

function keyOf({ source, start, from }: PlacedSegment): string {
  return [source, toNumber(start), toNumber(from)].join(" ");
}

function speedSaid(speed: number): string {
  if (speed === 1) return "";
  if (speed === 0) return "frozen";
  return `${Math.round(Math.abs(speed) * 100)} %${speed < 0 ? ", backwards" : ""}`;
}
