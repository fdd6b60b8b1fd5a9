/** Words of the rows of pan zeros and temperatures below a table of weighings. */
export const stripWords = {
  heading: "balance and room",
  columns: (unit: "C" | "F") => ({
    before: "Zero before, g",
    after: "Zero after, g",
    room: `Room, °${unit}`,
    warmth: `Sample, °${unit}`,
    correction: "taken off, g",
    cold: "Cold enough",
  }),
  room: { title: "Room", prompt: "Temperature beside the balance." },
  warmth: {
    title: "Sample when weighed",
    prompt:
      "The warmest vessel of this row, held near it. A warm vessel reads light; by how much, yours alone can tell. Published case: a 17 g porcelain crucible, up to 0.19 mg a degree C (Blade, Anal. Chem.).",
  },
  cold: { enough: "yes", warm: "? too warm: reads light", chilled: "? colder than the room" },
} as const;
