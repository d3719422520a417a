"use client";
import { type ReactNode, useState } from "react";

/** What is folded away below a line, and made only when somebody unfolds it: a build has hundreds of them. */
export function Folded({
  summary,
  className,
  small = false,
  children,
}: {
  summary: ReactNode;
  className?: string;
  small?: boolean;
  children: () => ReactNode;
}) {
  const [open, setOpen] = useState(false);
  return (
    <details className={className} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary className={small ? "small" : undefined}>{summary}</summary>
      {open && children()}
    </details>
  );
}
