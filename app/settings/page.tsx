import type { Metadata } from "next";
import { TitleBlock } from "#app/parts/title-block.tsx";
import { readSettings, theWorkshop } from "#lib/store/index.ts";
import { SettingsForm } from "./settings-form.tsx";

export const metadata: Metadata = { title: "Keys and settings" };

export default async function Page() {
  const { client, workshop } = theWorkshop();
  return (
    <>
      <main className="page">
        <h1>Keys and settings</h1>
        <SettingsForm settings={await readSettings(client)} />
        <p className="soft small" style={{ marginTop: 30, overflowWrap: "anywhere" }}>
          The workshop lies in {workshop.folder}.
        </p>
      </main>
      <TitleBlock />
    </>
  );
}
