import type { ReactNode } from "react";

/** Words of a button, with what it speaks of for who does not see the row it stands in. */
export function Named({ of, children }: { of: string; children: ReactNode }) {
  return (
    <>
      {children}
      <span className="hidden-words">: {of}</span>
    </>
  );
}
