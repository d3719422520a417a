import type { ReactNode } from "react";
import { BuildProvider } from "#app/session/provider.tsx";

export default async function Layout({
  children,
  params,
}: {
  children: ReactNode;
  params: Promise<{ build: string }>;
}) {
  const { build } = await params;
  return <BuildProvider buildId={build}>{children}</BuildProvider>;
}
