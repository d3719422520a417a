/** The words of a line: what stands between blanks, hard ones too; marks of direction are no words. */
export function wordsOf(line: string): string[] {
  return line.split(/[\s\u00a0\u200b\u200e\u200f\ufeff]+/).filter((word) => word !== "");
}
