"use client";
import { useRouter } from "next/navigation";
import { type FormEvent, useId, useState } from "react";
import { newBuild, newMachine, newSitting } from "#lib/build/new.ts";
import { putNew, send, sendPuts, Trouble } from "../parts/send.ts";

/** Runs work, and shows its trouble in words where there is some. */
function useWork() {
  const [trouble, setTrouble] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const run = (work: () => Promise<void>) => {
    setTrouble(null);
    setBusy(true);
    work()
      .catch((error: unknown) =>
        setTrouble(error instanceof Trouble ? error.message : "It did not work. Try again."),
      )
      .finally(() => setBusy(false));
  };
  const said = trouble && (
    <p className="finding" role="alert">
      {trouble}
    </p>
  );
  return { run, busy, said };
}

/** Opens the demonstration at its procedure. */
export function OpenDemo({ main = false }: { main?: boolean }) {
  const router = useRouter();
  const { run, busy, said } = useWork();
  return (
    <>
      <button
        type="button"
        className={main ? "main" : undefined}
        disabled={busy}
        onClick={() =>
          run(async () => {
            const { build } = await send<{ build: string }>("/folders/demo", {});
            router.push(`/builds/${build}/procedure`);
          })
        }
      >
        {busy ? "Opening…" : "Open the demonstration"}
      </button>
      {said}
    </>
  );
}

/** Opens three small builds, of which the third is warned by what the first two taught. */
export function OpenGotchaDemo() {
  const router = useRouter();
  const { run, busy, said } = useWork();
  return (
    <>
      <button
        type="button"
        disabled={busy}
        onClick={() =>
          run(async () => {
            const { build } = await send<{ build: string }>("/folders/gotcha-demo", {});
            router.push(`/builds/${build}`);
          })
        }
      >
        {busy ? "Opening…" : "Open three builds that teach each other"}
      </button>
      {said}
    </>
  );
}

/** A machine, its first build and its first sitting, in one go. */
export function NewMachine() {
  const router = useRouter();
  const { run, busy, said } = useWork();
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const text = (name: string) => String(form.get(name) ?? "").trim();
    run(async () => {
      const machine = newMachine({
        id: crypto.randomUUID(),
        name: text("name"),
        maker: text("maker"),
        model: text("model"),
        serial: text("serial"),
        years: text("years"),
      });
      const build = await beginBuild(machine.id, text("title"), [putNew("machine", machine)]);
      router.push(`/builds/${build}`);
    });
  };
  return (
    <form className="form" onSubmit={submit}>
      <LineField name="name" label="Machine, as you call it" required />
      <LineField name="title" label="What is restored: the whole, or an assembly" required />
      <LineField name="maker" label="Maker" />
      <LineField name="model" label="Model" />
      <LineField name="serial" label="Serial number" />
      <LineField name="years" label="Years" />
      <div className="wide">
        <button type="submit" className="main" disabled={busy}>
          Begin
        </button>
        {said}
      </div>
    </form>
  );
}

/** Another build of a machine that is known. */
export function NewBuild({ machineId }: { machineId: string }) {
  const router = useRouter();
  const { run, busy, said } = useWork();
  return (
    <form
      className="form"
      onSubmit={(event) => {
        event.preventDefault();
        const title = String(new FormData(event.currentTarget).get("title") ?? "").trim();
        run(async () => router.push(`/builds/${await beginBuild(machineId, title, [])}`));
      }}
    >
      <LineField name="title" label="What is restored this time" required />
      <div className="wide">
        <button type="submit" disabled={busy}>
          Begin a build
        </button>
        {said}
      </div>
    </form>
  );
}

async function beginBuild(
  machineId: string,
  title: string,
  before: ReturnType<typeof putNew>[],
): Promise<string> {
  const build = newBuild({ id: crypto.randomUUID(), machineId, title });
  const sitting = newSitting({
    id: crypto.randomUUID(),
    buildId: build.id,
    title: "First sitting",
    began: new Date().toISOString(),
    beganTrust: "when it was entered",
  });
  await sendPuts(`Begun: ${title}`, [...before, putNew("build", build), putNew("sitting", sitting)]);
  return build.id;
}

/** Brings in a build folder; where the build is here already, asks what to do and never merges. */
export function BringBuild() {
  const router = useRouter();
  const { run, busy, said } = useWork();
  const [folder, setFolder] = useState("");
  const [exists, setExists] = useState<string | null>(null);
  const bring = (choice: "replace" | "keep both" | null) =>
    run(async () => {
      const answer = await send<{ build?: string; exists?: string }>(
        "/folders/in",
        { folder, choice },
        (conflict) => conflict as { exists: string },
      );
      if (answer.exists !== undefined) setExists(answer.exists);
      else router.push(`/builds/${answer.build}`);
    });
  const id = useId();
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        bring(null);
      }}
      style={{ maxWidth: 720 }}
    >
      <label htmlFor={id}>Folder on this computer, with a build.json in it</label>
      <input
        id={id}
        value={folder}
        required
        onChange={(event) => {
          setFolder(event.target.value);
          setExists(null);
        }}
      />
      {exists === null ? (
        <button type="submit" disabled={busy} style={{ marginTop: 12 }}>
          Bring it in
        </button>
      ) : (
        <div className="finding" role="alert">
          <p>
            “{exists}” is in the workshop already. The two are never mixed: replace it (what it has and the
            folder lacks is struck out, and stays in its history), keep both, or leave it.
          </p>
          <div className="row-of-buttons" style={{ marginTop: 8 }}>
            <button type="button" onClick={() => bring("replace")}>
              Replace
            </button>
            <button type="button" onClick={() => bring("keep both")}>
              Keep both
            </button>
            <button type="button" onClick={() => setExists(null)}>
              Leave it
            </button>
          </div>
        </div>
      )}
      {said}
    </form>
  );
}

function LineField({ name, label, required = false }: { name: string; label: string; required?: boolean }) {
  const id = useId();
  return (
    <div>
      <label htmlFor={id}>{label}</label>
      <input id={id} name={name} required={required} maxLength={300} autoComplete="off" />
    </div>
  );
}
