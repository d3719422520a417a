/** A text as it is compared: small letters, single spaces, no marks of punctuation at the ends of words. */
export function fold(text: string): string {
  return text
    .toLowerCase()
    .replace(/[.,;:!“”"']+(?=\s|$)/g, "")
    .replace(/\s+/g, " ")
    .trim();
}
