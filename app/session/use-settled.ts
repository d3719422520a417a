"use client";
import { useCallback } from "react";
import { useSession } from "./provider.tsx";

/** For a link to a file that the program makes: what was changed is on disk before the file is asked for. */
export function useSettled(): (event: React.MouseEvent<HTMLAnchorElement>) => void {
  const session = useSession();
  return useCallback(
    (event) => {
      if (session.view().save.pending === 0) return;
      event.preventDefault();
      const { href } = event.currentTarget;
      void session.settled().then(() => window.location.assign(href));
    },
    [session],
  );
}
