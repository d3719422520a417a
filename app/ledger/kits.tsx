"use client";
import { useId, useState } from "react";
import { present } from "#lib/build/index.ts";
import { type KitAccount, readKit, reconcileKits } from "#lib/procedure/index.ts";
import { useTyped } from "../log/typed.tsx";
import { useSession } from "../session/provider.tsx";
import { addKit, changeKit, gotchaFromKit, noteKitLine } from "./deeds.ts";
import { Folded } from "./folded.tsx";
import { useLedger } from "./use-ledger.ts";

/** Kits: what is written on the bag, against what is needed, what came, what was fitted, and what is left over. */
export function Kits() {
  const session = useSession();
  const { ledger, document } = useLedger();
  const accounts = reconcileKits(ledger);
  return (
    <section className="block" aria-labelledby="kits-title">
      <h2 id="kits-title">Kits</h2>
      {present(document.kits).map((kit) => {
        const own = accounts.filter((line) => line.kit.id === kit.id);
        return (
          <section key={kit.id} aria-label={kit.name} style={{ marginBottom: 22 }}>
            <h3>
              {kit.name} {kit.supplier && <span className="soft small">{kit.supplier}</span>}
            </h3>
            <ul className="lines">
              {own.map((line) => (
                <KitLine key={line.typed} line={line} />
              ))}
            </ul>
            <button
              type="button"
              className="plain"
              onClick={() => changeKit(session, kit, { gone: new Date().toISOString() })}
            >
              Strike this kit out
            </button>
          </section>
        );
      })}
      <NewKit />
    </section>
  );
}

function KitLine({ line }: { line: KitAccount }) {
  const open = line.left > 0 && line.leftWhy === "";
  return (
    <li>
      <Folded
        className="grow"
        summary={
          <>
            <b>{line.name}</b> {line.partNumber && <span className="num soft">{line.partNumber}</span>}{" "}
            <span className="soft">
              need {line.need ?? "not known"} · came {line.received} · fitted {line.fitted}
              {line.spoilt > 0 && ` · spoilt ${line.spoilt}`} · left over {line.left}
            </span>
            {line.short > 0 && <b> · {line.short} short</b>}
            {line.note.notToUse ? <b> · not to be used</b> : open && <b> · why?</b>}
          </>
        }
      >
        {() => <KitNotes line={line} />}
      </Folded>
    </li>
  );
}

/** What the restorer says of a line: it is kept as it is typed. */
function KitNotes({ line }: { line: KitAccount }) {
  const session = useSession();
  const { document } = useLedger();
  const ids = { item: useId(), received: useId(), notToUse: useId(), leftWhy: useId() };
  const note = (columns: Partial<KitAccount["note"]>) => {
    const kit = session.document.kits.find((one) => one.id === line.kit.id) ?? line.kit;
    noteKitLine(session, kit, line.typed, { ...kit.lines[line.typed], ...columns });
  };
  const item = useTyped(line.note.item ?? "", (text) => note({ item: text }));
  const notToUse = useTyped(line.note.notToUse ?? "", (text) => note({ notToUse: text }));
  const leftWhy = useTyped(line.note.leftWhy ?? "", (text) => note({ leftWhy: text }));
  return (
    <div className="form" style={{ marginTop: 10 }}>
      <div>
        <label htmlFor={ids.item}>Belongs to the part</label>
        <input
          id={ids.item}
          list={`${ids.item}-parts`}
          value={item.text}
          onChange={(event) => item.change(event.target.value)}
          onBlur={item.flush}
        />
        <datalist id={`${ids.item}-parts`}>
          {present(document.items).map((one) => (
            <option key={one.id} value={one.name} />
          ))}
        </datalist>
      </div>
      <div>
        <label htmlFor={ids.received}>How many really came</label>
        <input
          id={ids.received}
          type="number"
          min={0}
          value={line.received}
          onChange={(event) => note({ received: Math.max(0, Math.round(event.target.valueAsNumber || 0)) })}
        />
      </div>
      <div className="wide">
        <label htmlFor={ids.leftWhy}>Left over, because</label>
        <input
          id={ids.leftWhy}
          value={leftWhy.text}
          onChange={(event) => leftWhy.change(event.target.value)}
          onBlur={leftWhy.flush}
        />
      </div>
      <div className="wide">
        <label htmlFor={ids.notToUse}>Must not be used, because</label>
        <input
          id={ids.notToUse}
          value={notToUse.text}
          onChange={(event) => notToUse.change(event.target.value)}
          onBlur={notToUse.flush}
        />
      </div>
      {line.note.notToUse && (
        <div className="wide">
          <button
            type="button"
            className="plain"
            onClick={() => gotchaFromKit(session, line.kit, line.name, line.note.notToUse ?? "")}
          >
            Make a gotcha of it, for whoever buys this kit next
          </button>
        </div>
      )}
    </div>
  );
}

/** A new kit: pasted, or read from a file of lines or comma-separated columns. */
function NewKit() {
  const session = useSession();
  const [kit, setKit] = useState({ name: "", supplier: "", text: "" });
  const ids = { name: useId(), supplier: useId(), text: useId(), file: useId() };
  const lines = readKit(kit.text);
  return (
    <details>
      <summary>Another kit</summary>
      <form
        className="form"
        style={{ marginTop: 10 }}
        onSubmit={(event) => {
          event.preventDefault();
          addKit(session, { ...kit, name: kit.name.trim() || "Kit" });
          setKit({ name: "", supplier: "", text: "" });
        }}
      >
        <div>
          <label htmlFor={ids.name}>What it is called</label>
          <input
            id={ids.name}
            value={kit.name}
            required
            onChange={(event) => setKit({ ...kit, name: event.target.value })}
          />
        </div>
        <div>
          <label htmlFor={ids.supplier}>From whom</label>
          <input
            id={ids.supplier}
            value={kit.supplier}
            onChange={(event) => setKit({ ...kit, supplier: event.target.value })}
          />
        </div>
        <div className="wide">
          <label htmlFor={ids.text}>
            What is in it <span className="soft">· a line each: 4 x Cover nut; or a table with headings</span>
          </label>
          <textarea
            id={ids.text}
            rows={6}
            value={kit.text}
            onChange={(event) => setKit({ ...kit, text: event.target.value })}
          />
        </div>
        <div className="wide">
          <label htmlFor={ids.file}>Or from a file (text or CSV)</label>
          <input
            id={ids.file}
            type="file"
            accept=".csv,.txt,.tsv,text/*"
            onChange={(event) => {
              const file = event.target.files?.[0];
              if (file && file.size < 200_000)
                void file.text().then((text) => setKit((one) => ({ ...one, text })));
            }}
          />
        </div>
        {lines.length > 0 && (
          <p className="soft small wide" role="status">
            Read as {lines.length} {lines.length === 1 ? "line" : "lines"}:{" "}
            {lines
              .slice(0, 8)
              .map((line) => `${line.count} ${line.name}`)
              .join("; ")}
            {lines.length > 8 && " …"}
          </p>
        )}
        <div>
          <button type="submit" disabled={lines.length === 0}>
            Keep the kit
          </button>
        </div>
      </form>
    </details>
  );
}
