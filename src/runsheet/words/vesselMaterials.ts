/** What a vessel is made of, and what it stands. */
export interface VesselMaterial {
  readonly name: string;
  /** °C, rounded down: a sound, empty-standing vessel, heated and cooled slowly, in air. The maker's figure comes first. */
  readonly standsCelsius: number;
  readonly source: string;
}

// "From memory" marks a figure not seen in print for this list; each of those stays well below what is usually quoted.
export const VESSEL_MATERIALS: readonly VesselMaterial[] = [
  { name: "soda-lime glass", standsCelsius: 110, source: "Cracks by thermal shock; low figure from memory, no source." },
  { name: "borosilicate glass 3.3", standsCelsius: 450, source: "Strain point 515 °C (ISO 3585 glass makers' data); 65 °C below it, our margin." },
  { name: "fused quartz", standsCelsius: 1000, source: "From memory: makers give 1000 to 1100 °C for long use." },
  { name: "glazed porcelain", standsCelsius: 1000, source: "From memory: makers give about 1000 to 1100 °C, where the glaze softens." },
  { name: "sintered alumina", standsCelsius: 1500, source: "From memory: makers give about 1700 °C." },
  {
    name: "tinned steel",
    standsCelsius: 230,
    source: "Tin melts at 231.9 °C (fixed point of the ITS-90 scale), and its coating is weighed with the vessel.",
  },
  { name: "mild steel", standsCelsius: 450, source: "From memory: scales fast in air above about 500 °C, and gains weight." },
  {
    name: "stainless steel 18/8",
    standsCelsius: 800,
    source: "Type 304: up to 1700 °F (925 °C) by the industry (SSINA); lower on and off, our margin. Scale is weight.",
  },
  { name: "aluminium", standsCelsius: 350, source: "From memory: melts at 660 °C, alloys lower, and goes soft long before." },
  { name: "nickel", standsCelsius: 550, source: "From memory: oxidises in air above about 600 °C, and gains weight." },
  { name: "graphite", standsCelsius: 400, source: "From memory: burns in air above about 450 °C." },
];
