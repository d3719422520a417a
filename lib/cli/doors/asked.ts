import path from "node:path";
import { z } from "zod";
import { Refused } from "#lib/store/index.ts";

/** A folder or file of this computer by its whole path, as a person copies it from the file manager. */
export const wholePath = z
  .string()
  .min(1, { error: "nothing was named" })
  .max(4000)
  .refine((text) => !/[\0\p{Cs}]/u.test(text), { error: "it holds a character that no path can have" })
  .refine(path.isAbsolute, { error: "it does not say where on this computer it is, as a whole path does" });

/**
 * What a request asks for, in its form.
 *
 * @throws Refused when it does not have it
 */
export function ask<T>(form: z.ZodType<T>, value: unknown, words: Partial<Asked> = {}): T {
  const asked = form.safeParse(value);
  if (asked.success) return asked.data;
  const issue = asked.error.issues[0];
  throw new Refused({
    found: `The ${issue?.path.join(".") || "request"} does not fit: ${issue?.message}.`,
    expected: words.expected ?? "A request as the program's own pages make it.",
    todo: words.todo ?? "Load the page again; it may be from another version of the program.",
  });
}

interface Asked {
  expected: string;
  todo: string;
}

/** What is said where a path does not fit. */
export const askedForPath: Asked = {
  expected: "The whole path of a folder or file on this computer.",
  todo: "Copy the path from the file manager.",
};
