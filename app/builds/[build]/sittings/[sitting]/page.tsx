import type { Metadata } from "next";
import { LogSheet } from "#app/log/log-sheet.tsx";
import { readSettings, theWorkshop } from "#lib/store/index.ts";

export const metadata: Metadata = { title: "Log" };

export default async function Page({ params }: { params: Promise<{ sitting: string }> }) {
  const { sitting } = await params;
  return <LogSheet key={sitting} sittingId={sitting} settings={await readSettings(theWorkshop().client)} />;
}
