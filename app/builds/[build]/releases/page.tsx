import type { Metadata } from "next";
import { ReleaseSheet } from "#app/releases/release-sheet.tsx";

export const metadata: Metadata = { title: "Releases" };

export default function Page() {
  return <ReleaseSheet />;
}
