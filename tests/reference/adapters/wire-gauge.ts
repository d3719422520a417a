import { read } from "#lib/quantity/index.ts";
import {
  awgInches,
  copperWire,
  drillNamed,
  type GaugeSystem,
  gaugeNumber,
  gaugeSize,
  gaugeText,
} from "#lib/reference/index.ts";
import { designations } from "../read/figures.ts";
import type { Adapter, Answer } from "../row.ts";

const inches = (system: GaugeSystem, size: string): number | undefined => {
  const found = gaugeSize(system, size);
  return found && found.mm / 25.4;
};

function copper(text: string, gauge: number): Answer | undefined {
  const wire = copperWire(gauge);
  if (/overcurrent/.test(text)) return { max_A: wire.fixed?.amperes };
  if (!/resistance/.test(text)) return undefined;
  return {
    ohm_per_1000_ft: wire.ohmPer1000ft,
    ohm_per_km: wire.ohmPerKm,
    chassis_current_A: wire.chassis?.amperes,
  };
}

/** A bare gauge is a question; its candidates give each system's size. */
function unnamed(text: string): Answer | undefined {
  const reading = read(text.replace(/'([^']*)'.*/, "$1"));
  const size = /(\d+)/.exec(text)?.[1] ?? "";
  if (reading.kind !== "question") return undefined;
  const drill = drillNamed(`No. ${size}`);
  return {
    question: reading.ask,
    ambiguous: true,
    AWG_in: inches("AWG", size),
    SWG_in: inches("SWG", size),
    US_sheet_steel_in: inches("MSG", size),
    [`drill_No${size}_in`]: drill && drill.mm / 25.4,
    [`screw_No${size}_in`]: inches("screw", size),
  };
}

export const adapter: Adapter = ({ input }) => {
  const [found] = designations(input.text.replace(/ \(.*\)/, ""));
  const screw = /screw gauge No\. (\d+)/.exec(input.text)?.[1];
  if (screw) return { diameter_in: inches("screw", screw), mm: (inches("screw", screw) ?? 0) * 25.4 };
  if (/no system named/.test(input.text)) return unnamed(input.text) ?? {};
  const written = found?.type === "wire gauge" ? found : undefined;
  const gauge = written ? gaugeNumber(written.size) : Number(input.n);
  const wire = copper(input.text, gauge);
  if (wire) return wire;
  const system = written?.system ?? (input.gauge as GaugeSystem);
  const size = inches(system, gaugeText(gauge));
  if (size === undefined) return {};
  const millimetres = size * 25.4;
  return {
    diameter_in: size,
    diameter_mm: millimetres,
    thickness_in: size,
    thickness_mm: millimetres,
    area_mm2: (Math.PI / 4) * (awgInches(gauge) * 25.4) ** 2,
  };
};
