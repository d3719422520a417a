import type { Metadata } from "next";
import { ProcedureSheet } from "#app/procedure/procedure-sheet.tsx";

export const metadata: Metadata = { title: "Procedure" };

export default function Page() {
  return <ProcedureSheet />;
}
