/** Durations in the form of ISO 8601 that has hours, minutes and seconds: "PT2M30S". */

/** Seconds as an ISO 8601 duration, whole seconds. */
export function isoDuration(seconds: number): string {
  const whole = Math.max(0, Math.round(seconds));
  const parts: [number, string][] = [
    [Math.floor(whole / 3600), "H"],
    [Math.floor(whole / 60) % 60, "M"],
    [whole % 60, "S"],
  ];
  const said = parts.filter(([count]) => count > 0).map(([count, letter]) => `${count}${letter}`);
  return `PT${said.join("") || "0S"}`;
}

/** Reads such a duration, in seconds; null when it is none. */
export function readIsoDuration(text: string): number | null {
  const parts = /^PT(?=\d)(?:(\d{1,9})H)?(?:(\d{1,9})M)?(?:(\d{1,9}(?:\.\d{1,9})?)S)?$/.exec(text);
  if (!parts) return null;
  const [hours, minutes, seconds] = parts.slice(1).map((part) => Number(part ?? 0));
  return (hours as number) * 3600 + (minutes as number) * 60 + (seconds as number);
}
