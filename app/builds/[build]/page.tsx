import type { Metadata } from "next";
import { BuildSheet } from "#app/bench/build-sheet.tsx";

export const metadata: Metadata = { title: "Build" };

export default function Page() {
  return <BuildSheet />;
}
