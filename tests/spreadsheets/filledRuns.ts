// Every run here is invented: walnut shells and prunings from a community orchard.
import { stripCell } from "../../src/runsheet/formulas/strip";
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { filledKinds } from "../runsheet/filledKinds";
import { openRunSheet, type OpenRunSheet } from "../runsheet/openRunSheet";
import { clock } from "../runsheet/plainRun";

const common = { weighIns: 7, intervalMinutes: 30, vessel: "lidded tin", readability: 0.01 } as const;

/** Made-up weighings of one sample: the vessel, what it weighs while drying, after each firing, and the vessel again. */
interface Weighed {
  readonly vessel: number | string;
  readonly drying: readonly number[];
  readonly char: readonly number[];
  readonly ash: readonly number[];
  readonly again: number;
}

const SHELLS: Weighed = {
  vessel: 212.4,
  drying: [262.85, 258.92, 256.88, 256.2, 256.19],
  char: [225.6, 225.15, 225.14],
  ash: [212.84, 212.83],
  again: 212.45,
};
const PRUNINGS: Weighed = {
  vessel: 208.1,
  drying: [251.7, 246.2, 244.9, 244.51, 244.5],
  char: [219.4, 218.91, 218.9],
  ash: [208.63, 208.62],
  again: 208.1,
};
const TARED: Weighed = { vessel: "tared", drying: [40.2, 31.1, 28.4, 27.62, 27.61], char: [8.1, 7.81, 7.8], ash: [0.42, 0.41], again: 0.02 };

async function weigh(sheet: OpenRunSheet, sample: number, { vessel, drying, char, ash, again }: Weighed): Promise<void> {
  await sheet.vessel(vessel, sample);
  for (const [index, grams] of drying.entries()) await sheet.round(index + 1, sample === 1 ? clock(9, 30 * index) : null, grams, sample);
  const noted = (held: number, hour: number) =>
    sample === 1
      ? { lit: clock(hour), set: 450, measured: 438, held, quiet: clock(hour + 1, 10), opened: clock(hour + 2, 20), seen: "white smoke" }
      : {};
  if (sheet.sheet.charring)
    for (const [index, grams] of char.entries()) await sheet.fire("charring", index + 1, grams, noted(60, 12 + 2.5 * index), sample);
  // Lit before the char was opened, and held for longer than that, as is then questioned.
  if (sheet.sheet.ashing) for (const [index, grams] of ash.entries()) await sheet.fire("ashing", index + 1, grams, noted(180, 16 + index), sample);
  if (sheet.sheet.end) await sheet.type(sheet.sheet.end.vessel(sample), again);
}

async function opened(options: RunSheetOptions, samples: readonly Weighed[]): Promise<OpenRunSheet> {
  const sheet = await openRunSheet(options);
  await sheet.type(sheet.sheet.setup.material, "walnut shells");
  for (const [index, weighed] of samples.entries()) await weigh(sheet, index + 1, weighed);
  return sheet;
}

async function analysed(sheet: OpenRunSheet): Promise<OpenRunSheet> {
  const { composition, settings } = sheet.sheet;
  if (composition === undefined) return sheet;
  for (const [at, content] of [[composition.carbon, 50], [composition.hydrogen, 6], [composition.oxygen, 43]] as const) await sheet.type(at, content); // prettier-ignore
  await sheet.type(settings.material, "mild steel");
  return sheet;
}

/** A run sheet of each kind, filled in: finished, half-way, contradicted, of different materials, and with every strip. */
export const filledRuns: Readonly<Record<string, () => Promise<Pick<OpenRunSheet, "workbook" | "engine" | "name" | "close">>>> = {
  ...filledKinds,
  "drying run": () => opened({ ...common, kind: "drying", replicates: 1 }, [SHELLS]),
  "charring run of one sample": () => opened({ ...common, kind: "charring", replicates: 1 }, [SHELLS]),
  "unfinished drying run": () => opened({ ...common, kind: "drying", replicates: 1 }, [{ ...SHELLS, drying: SHELLS.drying.slice(0, 4) }]),
  "charring run of three samples with its composition, one on a tared balance": async () =>
    analysed(await opened({ ...common, kind: "charring", replicates: 3, ovenCelsius: 105 }, [SHELLS, PRUNINGS, TARED])),
  "charring run of different materials": () => opened({ ...common, kind: "charring", replicates: 2, samplesAre: "different" }, [SHELLS, PRUNINGS]),
  "charring run with char and ash swapped, and times that run backward": async () => {
    const sheet = await opened({ ...common, kind: "ashing", replicates: 2 }, [SHELLS, { ...PRUNINGS, char: [219.4, 208.62], ash: [218.9, 208.62] }]);
    await sheet.round(3, clock(9, 10), null);
    return sheet;
  },
  "ashing run of two samples with pan zeros and temperatures": async () => {
    const sheet = await opened({ ...common, kind: "ashing", replicates: 2, panZeros: true, temperatures: true }, [SHELLS, PRUNINGS]);
    const from = sheet.sheet.rows.drying.strip?.first ?? 0;
    for (const number of SHELLS.drying.keys()) {
      const readings = { before: 0.01, after: 0.02, room: 21.5, warmth: 23 + number } as const;
      for (const [name, content] of Object.entries(readings)) await sheet.type(stripCell(from + number, name as "before"), content);
    }
    if (sheet.sheet.composition) await sheet.type(sheet.sheet.composition.formula, "C6H10O5");
    return sheet;
  },
};
