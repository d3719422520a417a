import { z } from "zod";

/**
 * The id of a row. Control characters and halves of letters (lone surrogates) are none: a database or a file that
 * cannot keep them would give back another id.
 */
export const id = z
  .string()
  .min(1)
  .max(100)
  .refine((text) => !/[\p{Cc}\p{Cs}]/u.test(text), { error: "an id holds no control characters" });

/** What every row has: an id that is kept for good, a count of its changes, and when it was struck out, if it was. */
export const base = {
  id,
  gone: z.string().max(40).nullable(),
  rev: z.number().int().min(0),
};
export const line = z.string().max(500);
export const text = z.string().max(20_000);
/**
 * A number as far as anything at a bench has one. The largest doubles do not come back from the database as they were,
 * and what is reckoned from them runs over.
 */
export const number = z.number().min(-1e12).max(1e12);
/** Seconds of a recording's clock: up to 116 days. */
export const seconds = z.number().min(0).max(1e7);
/** How many, or how large in pixels. */
export const whole = z.number().int().min(0).max(1e9);
