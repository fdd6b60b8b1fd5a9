import { degreesApart, typedDegrees } from "../options/degrees";

/** What a vessel is made of, and what it stands. */
export interface VesselMaterial {
  readonly name: string;
  /** °C, rounded down: a sound, empty-standing vessel, heated and cooled slowly, in air. The maker's figure comes first. */
  readonly standsCelsius: number;
  /** In the degrees of the sheet. */
  readonly source: (degrees: Degrees) => string;
}

/** Temperatures, and differences of them, as a sheet shows them, from degrees Celsius: "1832 °F", "1832 to 2012 °F". */
export interface Degrees {
  at(celsius: number, to?: number): string;
  apart(celsius: number): string;
  readonly isFahrenheit: boolean;
}

export const degreesShown = (unit: "C" | "F"): Degrees => ({
  at: (celsius, to) => `${[celsius, to].flatMap((one) => (one === undefined ? [] : [typedDegrees(one, unit)])).join(" to ")} °${unit}`,
  apart: (celsius) => `${degreesApart(celsius, unit)} °${unit}`,
  isFahrenheit: unit === "F",
});

// "From memory" marks a figure not seen in print for this list; each of those stays well below what is usually quoted.
export const VESSEL_MATERIALS: readonly VesselMaterial[] = [
  { name: "soda-lime glass", standsCelsius: 110, source: () => "Cracks by thermal shock; low figure from memory, no source." },
  {
    name: "borosilicate glass 3.3",
    standsCelsius: 450,
    source: ({ at, apart }) => `Strain point ${at(515)} (ISO 3585 glass makers' data); ${apart(65)} below it, our margin.`,
  },
  { name: "fused quartz", standsCelsius: 1000, source: ({ at }) => `From memory: makers give ${at(1000, 1100)} for long use.` },
  { name: "glazed porcelain", standsCelsius: 1000, source: ({ at }) => `From memory: makers give about ${at(1000, 1100)}, where the glaze softens.` },
  { name: "sintered alumina", standsCelsius: 1500, source: ({ at }) => `From memory: makers give about ${at(1700)}.` },
  {
    name: "tinned steel",
    standsCelsius: 230,
    source: ({ at }) => `Tin melts at ${at(231.9)} (fixed point of the ITS-90 scale), and its coating is weighed with the vessel.`,
  },
  { name: "mild steel", standsCelsius: 450, source: ({ at }) => `From memory: scales fast in air above about ${at(500)}, and gains weight.` },
  {
    name: "stainless steel 18/8",
    standsCelsius: 800,
    source: ({ isFahrenheit }) =>
      `Type 304: up to 1700 °F${isFahrenheit ? "" : " (925 °C)"} by the industry (SSINA); lower on and off, our margin. Scale is weight.`,
  },
  { name: "aluminium", standsCelsius: 350, source: ({ at }) => `From memory: melts at ${at(660)}, alloys lower, and goes soft long before.` },
  { name: "nickel", standsCelsius: 550, source: ({ at }) => `From memory: oxidises in air above about ${at(600)}, and gains weight.` },
  { name: "graphite", standsCelsius: 400, source: ({ at }) => `From memory: burns in air above about ${at(450)}.` },
];
