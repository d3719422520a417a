import "@fontsource/source-sans-3/latin-400.css";
import "@fontsource/source-sans-3/latin-600.css";
import "@fontsource/source-sans-3/latin-700.css";
import "@fontsource/source-sans-3/latin-ext-400.css";
import "@fontsource/source-sans-3/latin-ext-600.css";
import "@fontsource/source-code-pro/latin-400.css";
import "@fontsource/source-code-pro/latin-600.css";
import "./styles/sheet.css";
import "./styles/log.css";
import "#lib/publish/html/procedure.css";
import "./styles/procedure-page.css";
import "./styles/releases.css";
import "./styles/gotchas.css";
import "./styles/ledger.css";
import type { Metadata, Viewport } from "next";
import type { ReactNode } from "react";
import { DueLine } from "./due/due-line.tsx";

export const metadata: Metadata = {
  title: { default: "Witness Mark", template: "%s · Witness Mark" },
  description: "From a restorer's own recordings to a procedure that a stranger can follow at the bench.",
};

export const viewport: Viewport = { width: "device-width", initialScale: 1 };

/** Every page is made at the time it is asked for: it shows the workshop as it is, under a nonce of its own. */
export const dynamic = "force-dynamic";

export default function Layout({ children }: { children: ReactNode }) {
  return (
    <html lang="en">
      <body>
        <DueLine />
        {children}
      </body>
    </html>
  );
}
