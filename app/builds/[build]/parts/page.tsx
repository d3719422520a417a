import type { Metadata } from "next";
import { PartsSheet } from "#app/ledger/parts-sheet.tsx";

export const metadata: Metadata = { title: "Parts" };

export default function Page() {
  return <PartsSheet />;
}
