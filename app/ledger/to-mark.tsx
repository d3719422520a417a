"use client";
import Link from "next/link";
import type { ReactNode } from "react";
import { sayMoment } from "#lib/time/index.ts";
import { useSessionView } from "../session/provider.tsx";

/** The way to a mark's second on its log sheet; with its moment, or what stands between the tags. */
export function ToMark({ mark, children }: { mark: string; children?: ReactNode }) {
  const { document } = useSessionView();
  const found = document.marks.find((one) => one.id === mark);
  if (!found) return <>{children}</>;
  const moment = found.at === null ? "without film" : sayMoment(found.at);
  return (
    <Link href={`/builds/${document.build.id}/sittings/${found.sittingId}?mark=${mark}`} prefetch={false}>
      {children ?? <span className="num">{moment}</span>}
    </Link>
  );
}
