import type { Metadata } from "next";
import { FigureSheet } from "#app/figures/figure-sheet.tsx";

export const metadata: Metadata = { title: "Figure" };

export default async function Page({ params }: { params: Promise<{ still: string }> }) {
  const { still } = await params;
  return <FigureSheet stillId={decodeURIComponent(still)} />;
}
