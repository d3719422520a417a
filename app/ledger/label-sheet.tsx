"use client";
import { renderSVG } from "uqr";
import { type Container, containersOf } from "#lib/procedure/index.ts";
import { BuildTitleBlock } from "../parts/title-block.tsx";
import { useLedger } from "./use-ledger.ts";

/** Labels to print and put into bags and tins. The code holds the words of the label: it needs no program to read. */
export function LabelSheet() {
  const { ledger, document } = useLedger();
  const containers = containersOf(ledger);
  const head = [document.machine.name, document.machine.serial, document.build.title]
    .filter(Boolean)
    .join(" · ");
  return (
    <>
      <main className="page label-sheet">
        <div className="no-print">
          <h1>Labels</h1>
          <p className="soft">
            One for each bag or tin that a mark names. The code holds the same words, for a telephone to read
            without this program.
          </p>
          <button type="button" className="main" onClick={() => window.print()}>
            Print
          </button>
        </div>
        {containers.length === 0 && <p>No mark says yet which bag or tin a part lies in.</p>}
        <ul className="labels">
          {containers.map((one) => (
            <Label key={one.name} container={one} head={head} />
          ))}
        </ul>
      </main>
      <BuildTitleBlock />
    </>
  );
}

function Label({ container, head }: { container: Container; head: string }) {
  const lines = container.holds.map(
    ({ count, name, event }) => `${count} ${name}${event.written ? ` (off at ${event.written})` : ""}`,
  );
  const words = [container.name, head, ...lines].join("\n");
  return (
    <li>
      <Code words={words} />
      <div>
        <b className="label-name">{container.name}</b>
        <p className="small">{head}</p>
        <ul>
          {lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
          {lines.length === 0 && <li>empty</li>}
        </ul>
      </div>
    </li>
  );
}

/** A QR code (ISO/IEC 18004) of the words, cut short where it would grow too fine for a camera. */
function Code({ words }: { words: string }) {
  const short = new TextDecoder()
    .decode(new TextEncoder().encode(words).slice(0, 300))
    .replace(/\uFFFD+$/, "");
  const svg = renderSVG(short, { ecc: "M", border: 4 });
  const address = `data:image/svg+xml;utf8,${encodeURIComponent(svg)}`;
  // biome-ignore lint/performance/noImgElement: a picture made here, not one to be fetched
  return <img className="label-code" src={address} alt="The words of this label as a code" />;
}
