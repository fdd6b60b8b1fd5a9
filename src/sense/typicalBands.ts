/** What typical ranges are known for. All are fractions but the heating value, in MJ/kg. */
export const RANGE_QUANTITIES = [
  "volatile matter",
  "fixed carbon",
  "ash",
  "carbon",
  "hydrogen",
  "oxygen",
  "nitrogen",
  "heating value",
  "moisture",
  "char yield",
] as const;
export type RangeQuantity = (typeof RANGE_QUANTITIES)[number];

export const rangeUnit = (quantity: RangeQuantity): string => (quantity === "heating value" ? "MJ/kg" : "");

type Band = readonly [least: number, most: number];

/** A published band of many samples: fractions, dry where nothing else is said, heating values in MJ/kg. */
export interface TypicalBands {
  readonly feedstock: string;
  /** What the samples were, as the sentence names them. */
  readonly called: string;
  readonly source: string;
  readonly bands: Readonly<Partial<Record<RangeQuantity, Band>>>;
}

/** How a band is marked that no publication stands behind. */
export const NO_SOURCE = "common practice, no source";

/** Read when no feedstock is named, or none of its own is known. */
export const plantMatter: TypicalBands & { readonly bands: Readonly<Record<RangeQuantity, Band>> } = {
  feedstock: "plant matter",
  called: "untreated plant matter",
  source: `span of the materials listed, widened; ${NO_SOURCE}`,
  bands: {
    "volatile matter": [0.6, 0.9],
    "fixed carbon": [0.09, 0.27],
    ash: [0.001, 0.25],
    carbon: [0.36, 0.54],
    hydrogen: [0.045, 0.07],
    oxygen: [0.32, 0.48],
    nitrogen: [0, 0.016],
    "heating value": [15, 21.5],
    moisture: [0, 0.7],
    "char yield": [0.1, 0.45],
  },
};

export const typicalBands: readonly TypicalBands[] = [
  plantMatter,
  {
    feedstock: "wood",
    called: "most woods",
    source: "MIL-HDBK-1003/6, table 12",
    bands: {
      "volatile matter": [0.74, 0.82],
      "fixed carbon": [0.17, 0.23],
      ash: [0.005, 0.022],
      carbon: [0.496, 0.531],
      hydrogen: [0.058, 0.067],
      oxygen: [0.398, 0.438],
      // Printed as 8560 to 9130 Btu/lb.
      "heating value": [19.9, 21.2],
      moisture: [0.36, 0.58],
    },
  },
  {
    feedstock: "nut shells",
    called: "nut shells",
    source: "Energy Sources 24 (2002) 215",
    bands: { carbon: [0.474, 0.535], hydrogen: [0.058, 0.067], oxygen: [0.355, 0.416], nitrogen: [0.005, 0.016] },
  },
];
