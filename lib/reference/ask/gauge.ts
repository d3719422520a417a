import { copperWire, type GaugeSystem, gaugeNumber, gaugeSize, gaugesNear } from "../gauges/index.ts";
import { columnInches, columnMm, distinct, type Entry, type Figure, short } from "./reply.ts";

/** A gauge number in one system, with what a copper wire of that gauge bears where the gauge is American. */
export function gaugeEntry(system: GaugeSystem, size: string): Entry | undefined {
  const gauge = gaugeSize(system, size);
  if (!gauge) return undefined;
  const others = gaugesNear(gauge.mm, ["SWG", "AWG", "MSG"], 2).filter(({ name }) => name !== gauge.name);
  return {
    title: gauge.name,
    about: system === "MSG" ? "sheet steel gauge" : system === "screw" ? "screw gauge" : "wire gauge",
    figures: [
      { label: system === "MSG" ? "thickness" : "diameter", mm: gauge.mm, source: gauge.source },
      ...(system === "AWG" ? copperFigures(gaugeNumber(size)) : []),
    ],
    beside: {
      caption: `In other gauges, near ${gauge.name}`,
      columns: ["mm", "in"],
      rows: [gauge, ...others].map((one) => ({
        label: one.name,
        cells: [columnMm(one.mm), columnInches(one.mm)],
      })),
      sources: distinct([gauge, ...others].map(({ source }) => source)),
    },
    notes:
      system === "AWG"
        ? ["Currents are upper guides. In fixed wiring local codes and a licensed electrician decide."]
        : [],
  };
}

function copperFigures(gauge: number): Figure[] {
  const wire = copperWire(gauge);
  return [
    { label: "section", value: `${short(wire.area, 3)} mm²`, source: wire.source },
    {
      label: "resistance, copper at 20 °C",
      value: `${short(wire.ohmPerKm, 3)} Ω/km`,
      other: `${short(wire.ohmPer1000ft, 3)} Ω/1000 ft`,
      source: wire.source,
    },
    ...(wire.chassis
      ? [
          {
            label: "chassis wiring in free air, at most",
            value: `${wire.chassis.amperes} A`,
            source: wire.chassis.source,
          },
        ]
      : []),
    ...(wire.fixed
      ? [{ label: "fixed wiring, largest fuse", value: `${wire.fixed.amperes} A`, source: wire.fixed.source }]
      : []),
  ];
}
