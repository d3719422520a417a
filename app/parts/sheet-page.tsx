"use client";
import type { ReactNode } from "react";
import { Conflicts } from "../log/conflicts.tsx";
import { Saved } from "../log/keys-panel.tsx";
import { useSessionView } from "../session/provider.tsx";
import { BuildTitleBlock } from "./title-block.tsx";

/** A sheet of a build: its name under that of the build, what it says, what is on disk, and the way to the others. */
export function SheetPage({
  title,
  of,
  about,
  className = "page",
  children,
}: {
  title: string;
  /** What it is a sheet of; the build until said otherwise. */
  of?: string;
  about?: ReactNode;
  className?: string;
  children: ReactNode;
}) {
  const { document } = useSessionView();
  return (
    <>
      <main className={className}>
        <p className="soft small" style={{ margin: 0 }}>
          {of ?? document.build.title}
        </p>
        <h1>{title}</h1>
        {about && <p className="soft">{about}</p>}
        <Conflicts />
        {children}
        <div style={{ marginTop: 20 }}>
          <Saved />
        </div>
      </main>
      <BuildTitleBlock />
    </>
  );
}
