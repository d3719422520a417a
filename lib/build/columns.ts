import { z } from "zod";

/** What every row has: an id that is kept for good, a count of its changes, and when it was struck out, if it was. */
export const base = {
  id: z.string().min(1).max(100),
  gone: z.string().max(40).nullable(),
  rev: z.number().int().min(0),
};
/** The id of another row. */
export const id = z.string().min(1).max(100);
export const line = z.string().max(500);
export const text = z.string().max(20_000);
