/**
 * Makes a name for the disk out of a name that came with an upload. The user's own name is kept elsewhere, for
 * the screen; this one only has to be harmless on every system and still tell files apart in a folder window.
 * Rules: Microsoft Learn, "Naming Files, Paths, and Namespaces"; bidirectional controls are in category Cf.
 *
 * @returns at most 120 bytes of UTF-8, never empty, never hidden, with its ending kept in lower case
 */
export function diskName(name: string): string {
  const last = name.split(/[/\\]/).at(-1) ?? "";
  const whole = last
    .replace(/\p{Cf}/gu, "")
    .replace(/[\p{C}\p{Zl}\p{Zp}<>:"|?*]/gu, "_")
    .replace(/\s+/gu, " ")
    // Last, since what was taken out may have stood between a letter and its accent.
    .normalize("NFC");
  const clean = trimmed(whole);
  const dot = clean.lastIndexOf(".");
  const ending =
    /^\.[A-Za-z0-9]{1,10}$/.test(clean.slice(dot)) && dot > 0 ? clean.slice(dot).toLowerCase() : "";
  const stem = trimmed(ending === "" ? clean : clean.slice(0, dot));
  const short = trimmed(cutToBytes(stem, 120 - ending.length - 1));
  return `${isReserved(short) ? "_" : ""}${short || "recording"}${ending}`;
}

/** Windows drops trailing dots and spaces silently; a leading dot hides a file elsewhere. */
function trimmed(text: string): string {
  return text.replace(/^[. ]+|[. ]+$/g, "");
}

/** A device keeps its name whatever ending follows: NUL.tar.gz is NUL. */
function isReserved(stem: string): boolean {
  return /^(CON|PRN|AUX|NUL|CONIN\$|CONOUT\$|(COM|LPT)[0-9¹²³])( *\.|$)/i.test(stem);
}

function cutToBytes(text: string, limit: number): string {
  let kept = "";
  let bytes = 0;
  for (const character of text) {
    bytes += Buffer.byteLength(character);
    if (bytes > limit) break;
    kept += character;
  }
  return kept;
}
