import { collectTimestamp, isConformingTimestamp } from "#lib/captions/index.ts";
import type { Adapter } from "../row.ts";

export const adapter: Adapter = ({ input }) => {
  const found = collectTimestamp(input.text, 0);
  const whole = found?.end === input.text.length ? found.seconds : null;
  return { conforming: isConformingTimestamp(input.text), parser_seconds: whole };
};
