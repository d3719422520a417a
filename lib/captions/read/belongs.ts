/** The most that is read of a caption file, in bytes: more than any spoken day comes to. */
export const mostCaptionBytes = 10_000_000;

/** A file's name or path without its ending, in small letters. */
export function stemOf(file: string): string {
  return file.toLowerCase().replace(/\.[^./]*$/, "");
}

/** Stems that a caption file's film may have: its own, and that before a language, as "lathe" for lathe.en-GB.vtt. */
export function filmStemsOf(captions: string): string[] {
  const stem = stemOf(captions);
  return [...new Set([stem, stem.replace(/\.[a-z]{2,3}(-[a-z0-9]{2,8})?$/, "")])];
}

/** Whether a caption file and a film belong together: one name but for its ending, and a language before that. */
export function sameStem(captions: string, film: string): boolean {
  return filmStemsOf(captions).includes(stemOf(film));
}
