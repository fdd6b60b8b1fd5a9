import { driftCorrected } from "../formulas/driftCorrected";
import type { RunSheet } from "../sheet/RunSheet";
import type { Weighing } from "../sheet/sampleCells";
import { zeroWords, type BoxWords } from "../words/BoxWords";
import { label, ofCells, together, type Block } from "./Block";
import { box, masses, zeros } from "./entries";

type ZeroLabels = Readonly<Record<keyof NonNullable<Weighing["zeros"]>, string>>;

/** One weighing's box, between those of the balance's zero where the sheet has them, with the corrected mass below. */
export function weighingBox({ options, formats }: RunSheet, weighing: Weighing, words: BoxWords, labels: ZeroLabels): Block {
  const { readability } = options;
  const reading = box(weighing.box, words, masses(readability), { format: formats.read });
  if (weighing.zeros === undefined) return reading;
  const { before, after, corrected } = weighing.zeros;
  return together(
    box(before, zeroWords(labels.before, "before"), zeros(readability), { format: formats.read }),
    reading,
    box(after, zeroWords(labels.after, "after"), zeros(readability), { format: formats.read }),
    ofCells(label(corrected, labels.corrected), {
      at: corrected,
      formula: driftCorrected(weighing.box, before, after),
      style: "computed",
      format: formats.corrected,
    }),
  );
}
