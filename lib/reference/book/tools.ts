import { copperWire, type GaugeSystem, gaugeNumber, gaugeSize, gaugeText } from "../gauges/index.ts";
import { allJaws } from "../spanners/index.ts";
import { type BookChapter, type BookTable, inches, mm, orDash } from "./table.ts";

const gaugeTable = (
  system: GaugeSystem,
  id: string,
  title: string,
  standard: string,
  from: number,
  to: number,
): BookTable => ({
  id,
  title,
  standard,
  columns: ["number", "mm", "in"],
  rows: () =>
    Array.from({ length: to - from + 1 }, (_, index) => gaugeText(from + index)).flatMap((size) => {
      const gauge = gaugeSize(system, size);
      return gauge ? { cells: [size, mm(gauge.mm), inches(gauge.mm)], sources: [gauge.source] } : [];
    }),
});

/** Spanners and gauges. */
export const toolChapter: BookChapter = {
  title: "Spanners and gauges",
  tables: [
    {
      id: "spanners",
      title: "Spanners, sizes across flats",
      standard: "BS 190, BS 57, ISO 272, ASME B18.2.1",
      columns: ["spanner", "mm", "in", "heads"],
      rows: () =>
        allJaws.map(({ name, mm: size, heads, source }) => ({
          cells: [name, mm(size), inches(size), heads.join(", ")],
          sources: [source],
        })),
    },
    gaugeTable("SWG", "swg", "Imperial standard wire gauge (SWG)", "BS 3737", -6, 50),
    {
      id: "awg",
      title: "American wire gauge (AWG), copper",
      standard: "ASTM B258",
      columns: ["number", "mm", "in", "mm²", "Ω/km at 20 °C", "chassis, at most A", "fixed wiring fuse, A"],
      rows: () =>
        Array.from({ length: 44 }, (_, index) => gaugeText(index - 3)).flatMap((size) => {
          const gauge = gaugeSize("AWG", size);
          const wire = copperWire(gaugeNumber(size));
          return gauge
            ? {
                cells: [
                  size,
                  mm(gauge.mm),
                  inches(gauge.mm),
                  wire.area.toPrecision(4),
                  wire.ohmPerKm.toPrecision(4),
                  orDash(wire.chassis?.amperes),
                  orDash(wire.fixed?.amperes),
                ],
                sources: [gauge.source, wire.source, wire.chassis?.source, wire.fixed?.source].filter(
                  (one) => one !== undefined,
                ),
              }
            : [];
        }),
    },
    gaugeTable("MSG", "sheet-steel", "Sheet steel (US)", "Manufacturers' Standard Gage", 3, 30),
    gaugeTable("screw", "screw-gauge", "Screw gauge", "ASME B18.6.1", 0, 24),
  ],
};
