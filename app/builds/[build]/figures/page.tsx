import type { Metadata } from "next";
import { FiguresList } from "#app/figures/figures-list.tsx";

export const metadata: Metadata = { title: "Figures" };

export default function Page() {
  return <FiguresList />;
}
