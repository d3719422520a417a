/** What the parent asks of the printing child; it goes over the channel between them. */
export interface PrintOrder {
  /** A folder that does not exist: the compiler can read nothing but what it is given. */
  workspace: string;
  /** Name of the main source. */
  main: string;
  sources: { name: string; text: string }[];
  data: { name: string; bytes: Uint8Array }[];
  /** Paths of font files. */
  fonts: string[];
}

export type PrintResult =
  | { ok: true; standard: "ua-1" | "tagged-1.7"; pdf: Uint8Array; why: string; notes: string[] }
  | { ok: false; message: string };
