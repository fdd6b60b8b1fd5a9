// Every run here is invented: walnut shells and prunings from a community orchard.
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { openRunSheet, type OpenRunSheet } from "../runsheet/openRunSheet";

const FULL_DAY_MINUTES = 1440;
const MINUTES = 30;
const STARTED = 540;

const common = { weighIns: 7, intervalMinutes: MINUTES, vessel: "lidded tin" } as const;

/** Made-up weighings of one sample: the vessel, what it weighs while drying, and with char and ash. */
interface Weighed {
  readonly vessel: number;
  readonly drying: readonly number[];
  readonly char: number;
  readonly ash: number;
}

const SHELLS: Weighed = { vessel: 212.4, drying: [262.85, 258.92, 256.88, 256.2, 256.19], char: 225.14, ash: 212.83 };
const PRUNINGS: Weighed = { vessel: 208.1, drying: [251.7, 246.2, 244.9, 244.51, 244.5], char: 218.9, ash: 208.62 };

async function weigh(sheet: OpenRunSheet, sample: number, { vessel, drying, char, ash }: Weighed): Promise<void> {
  await sheet.fillIn("Empty vessel (g)", vessel, sample);
  for (const [index, grams] of drying.entries()) await sheet.weighIn(index + 1, (STARTED + MINUTES * index) / FULL_DAY_MINUTES, grams, sample);
  if (sheet.name !== "Drying run") await sheet.fillIn("Vessel + char (g)", char, sample);
  if (sheet.name === "Ashing run") await sheet.fillIn("Vessel + ash (g)", ash, sample);
}

async function opened(options: RunSheetOptions, samples: readonly Weighed[]): Promise<OpenRunSheet> {
  const sheet = await openRunSheet(options);
  await sheet.fillIn("Sample", "walnut shells (invented)");
  for (const [index, weighed] of samples.entries()) await weigh(sheet, index + 1, weighed);
  return sheet;
}

/** A run sheet of each kind, filled in; the last with every extra column. */
export const filledRuns: Readonly<Record<string, () => Promise<OpenRunSheet>>> = {
  "drying run": () => opened({ ...common, kind: "drying", readability: 0.01, replicates: 1 }, [SHELLS]),
  "unfinished drying run": () =>
    opened({ ...common, kind: "drying", readability: 0.01, replicates: 1 }, [{ ...SHELLS, drying: SHELLS.drying.slice(0, 4) }]),
  "charring run of two samples with its composition": async () => {
    const sheet = await opened({ ...common, kind: "charring", readability: 0.01, replicates: 2, ovenCelsius: 105 }, [SHELLS, PRUNINGS]);
    const composition = { "Carbon (fraction of dry)": 0.5, "Hydrogen (fraction of dry)": 0.06, "Oxygen (fraction of dry)": 0.43 };
    for (const [label, content] of Object.entries({ "Vessel material": "mild steel", ...composition })) await sheet.fillIn(label, content);
    return sheet;
  },
  "ashing run of two samples with pan zeros and temperatures": async () => {
    const options = { ...common, kind: "ashing", readability: 0.01, replicates: 2, panZeros: true, temperatures: true } as const;
    const sheet = await opened(options, [SHELLS, PRUNINGS]);
    for (const number of SHELLS.drying.keys()) {
      const readings = { "Pan zero before (g)": 0.01, "Pan zero after (g)": 0.02, "Room (°C)": 21.5, "Sample when weighed (°C)": 23 + number };
      for (const [heading, content] of Object.entries(readings)) await sheet.enter(number + 1, heading, content);
    }
    await sheet.fillIn("Formula of what burns", "C6H10O5");
    return sheet;
  },
};
