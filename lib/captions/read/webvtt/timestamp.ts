/** A time read from a text, and where it ended. */
export interface TimestampAt {
  seconds: number;
  end: number;
}

/** Whether a text is a timestamp as authors must write it: hours, if any, in two digits or more (section 4.1). */
export function isConformingTimestamp(text: string): boolean {
  return /^(?:\d{2,}:)?[0-5]\d:[0-5]\d\.\d{3}$/.test(text);
}

const timestamp = /(\d+):(\d\d)(?::(\d\d))?\.(\d{3})(?!\d)/y;

/**
 * Collects a WebVTT timestamp: hours may be missing, or have any number of digits; minutes and seconds have two, and
 * thousandths three. A first figure that is not two digits, or more than 59, is hours (W3C WebVTT, section 6.3,
 * "collect a WebVTT timestamp").
 */
export function collectTimestamp(text: string, place: number): TimestampAt | null {
  timestamp.lastIndex = place;
  const found = timestamp.exec(text);
  if (!found) return null;
  const [whole, first = "", second = "", third, thousandths = ""] = found;
  if (third === undefined && (first.length !== 2 || Number(first) > 59)) return null;
  const [hours, minutes, seconds] = third === undefined ? ["0", first, second] : [first, second, third];
  if (Number(minutes) > 59 || Number(seconds) > 59) return null;
  const total = Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds) + Number(thousandths) / 1000;
  return Number.isFinite(total) ? { seconds: total, end: place + whole.length } : null;
}
