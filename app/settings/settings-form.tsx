"use client";
import { useId, useState } from "react";
import type { Settings } from "#lib/store/settings.ts";
import { deeds, keysOf, sayKey } from "../log/keys.ts";
import { send, Trouble } from "../parts/send.ts";

/** The reaction time, and the single keys: another one for each deed, or none at all. */
export function SettingsForm({ settings }: { settings: Settings }) {
  const [chosen, setChosen] = useState(settings);
  const [said, setSaid] = useState("");
  const lag = useId();
  const keep = async (next: Settings) => {
    setChosen(next);
    try {
      await send("/settings/save", next);
      setSaid("On disk.");
    } catch (error) {
      setSaid(error instanceof Trouble ? error.message : "It was not kept.");
    }
  };
  const keys = keysOf(chosen);
  return (
    <>
      <section className="block">
        <h2>Reaction time</h2>
        <div style={{ maxWidth: 420 }}>
          <label htmlFor={lag}>
            How far a mark is set before the moment shown, while the film runs, in seconds
          </label>
          <input
            id={lag}
            type="number"
            min={0}
            max={30}
            step={0.1}
            value={chosen.reactionTime}
            onChange={(event) =>
              void keep({
                ...chosen,
                reactionTime: Math.min(30, Math.max(0, event.target.valueAsNumber || 0)),
              })
            }
          />
        </div>
      </section>
      <CaptionCommand
        value={chosen.captionCommand}
        onKeep={(captionCommand) => void keep({ ...chosen, captionCommand })}
      />
      <section className="block">
        <h2>Single keys</h2>
        <label style={{ padding: "6px 0", color: "inherit", fontSize: "1rem" }}>
          <input
            type="checkbox"
            checked={chosen.singleKeys}
            onChange={(event) => void keep({ ...chosen, singleKeys: event.target.checked })}
          />
          Single keys act on the log sheet
        </label>
        <ul className="lines" style={{ maxWidth: 620 }}>
          {deeds.map((deed) => (
            <li key={deed.name}>
              <span className="grow">{deed.words}</span>
              <KeyField
                label={`Key for: ${deed.words}`}
                value={keys.get(deed.name) ?? ""}
                taken={(key) => deeds.find((one) => one !== deed && keys.get(one.name) === key)?.words}
                onKey={(key) => void keep({ ...chosen, keys: { ...chosen.keys, [deed.name]: key } })}
              />
            </li>
          ))}
        </ul>
        <div className="row-of-buttons" style={{ marginTop: 14 }}>
          <button type="button" onClick={() => void keep({ ...chosen, keys: {} })}>
            All keys as they were
          </button>
          <span role="status" className="soft">
            {said}
          </span>
        </div>
      </section>
    </>
  );
}

/** The restorer's own command that makes captions. It is kept when the field is left. */
function CaptionCommand({ value, onKeep }: { value: string; onKeep: (command: string) => void }) {
  const [text, setText] = useState(value);
  const id = useId();
  const unplaced = text.trim() !== "" && !text.includes("{sound}");
  return (
    <section className="block">
      <h2>Captions from sound</h2>
      <div style={{ maxWidth: 720 }}>
        <label htmlFor={id}>A command on this computer that makes captions from a sound file</label>
        <input
          id={id}
          value={text}
          maxLength={2000}
          spellCheck={false}
          autoComplete="off"
          placeholder="/home/me/bin/write-captions {sound} {captions}"
          onChange={(event) => setText(event.target.value)}
          onBlur={() => text !== value && onKeep(text.trim())}
        />
        {unplaced && <p className="finding">Write {"{sound}"} where the sound file goes.</p>}
        <p className="soft small" style={{ marginTop: 8 }}>
          {"{sound}"} stands for the sound file (WAV, 16 kHz; the film itself where there is no ffmpeg),{" "}
          {"{captions}"} for the file to write, in WebVTT, SRT or timed text; without it what the command
          prints is taken. Quotation marks hold words together; no shell is asked. It is run only when you
          press “Make captions from its sound” at a recording. Empty: nothing is run.
        </p>
      </div>
    </section>
  );
}

/** A field that takes the next key pressed in it. Tab and Escape leave it, as everywhere. */
function KeyField({
  label,
  value,
  taken,
  onKey,
}: {
  label: string;
  value: string;
  taken: (key: string) => string | undefined;
  onKey: (key: string) => void;
}) {
  const [trouble, setTrouble] = useState("");
  return (
    <span style={{ width: 260 }}>
      <input
        aria-label={label}
        readOnly
        value={sayKey(value)}
        style={{ width: 120, display: "inline-block", fontFamily: "var(--figures)" }}
        onKeyDown={(event) => {
          if (["Tab", "Escape", "Shift", "Control", "Alt", "Meta"].includes(event.key)) return;
          event.preventDefault();
          const other = taken(event.key);
          setTrouble(other ? `already: ${other}` : "");
          if (!other) onKey(event.key);
        }}
      />{" "}
      <span role="status" className="small">
        {trouble}
      </span>
    </span>
  );
}
