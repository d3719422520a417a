import type { Metadata } from "next";
import { LabelSheet } from "#app/ledger/label-sheet.tsx";

export const metadata: Metadata = { title: "Labels" };

export default function Page() {
  return <LabelSheet />;
}
