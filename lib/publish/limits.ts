/**
 * What every output says of itself. The wording defers to local codes and licensed practice, as the table of
 * hazards does, and calls nothing safe.
 */
export const limits = {
  heading: "What this procedure cannot do",
  paragraphs: [
    "This is the record of what one person did to one machine. The program that set it out cannot judge wear, choose a substitute or decide that anything is without danger. A number is only as good as the source given beside it: measure your own machine.",
    "Local codes and licensed practice come first. Mains electricity, gas, pressure vessels and steam, asbestos, brakes and steering are for those who are licensed to work on them, under the codes that hold where you are.",
  ],
} as const;
