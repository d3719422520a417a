import type { Metadata } from "next";
import { FindingsSheet } from "#app/findings/findings-sheet.tsx";

export const metadata: Metadata = { title: "Findings" };

export default function Page() {
  return <FindingsSheet />;
}
