import { onceNumbers, when } from "../expressions/choices";
import { fn, is, reckon, retort, type Call, type Cell, type Expression } from "../expressions/Expression";
import type { RunSheet } from "../sheet/RunSheet";
import type { Ashing, Charring, SampleCells } from "../sheet/sampleCells";
import { resultWords } from "../words/resultWords";

/** A result that is a share of the sample. */
export interface Share {
  readonly name: keyof (typeof resultWords)["shares"];
  /** Where it stands. */
  readonly cell: Cell;
  /** Fraction; empty until all it needs is weighed. */
  readonly value: Expression;
  /** Standard uncertainty, fraction; only once the share is known. */
  readonly uncertainty: Expression;
  /** Where that stands, right of everything printed. */
  readonly working: Cell;
}

/**
 * The shares of one sample, in the order of the sheet. Each is a loss fraction w = (before - after) / (before - vessel) or a
 * function of one alone, so that its uncertainty is that of LOSSFRACTION.U: char yield and ash are 1 less a loss; without
 * ash the ash weighing stands in for the empty vessel, which cancels; on the dry basis U = w / (1 - w), so
 * u(U) = u(w) (1 + U)^2 (GUM, JCGM 100:2008, 5.1.2).
 */
export function sharesOf(sheet: RunSheet, sample: SampleCells): readonly Share[] {
  const { charring, ashing } = sample;
  const shares = [
    ...ofDrying(sheet, sample),
    ...(charring === undefined ? [] : ofCharring(sheet, sample, charring)),
    ...(charring === undefined || ashing === undefined ? [] : ofAshing(sheet, sample, charring, ashing)),
  ];
  return shares.map((share) => ({ ...share, working: sample.working(share.cell.row) }));
}

type Reckoned = Omit<Share, "working">;

function ofDrying(sheet: RunSheet, { vessel, moist, dry, shares }: SampleCells): Reckoned[] {
  const weighed = [vessel, moist, dry] as const;
  const { moistureWet, moistureDry } = shares;
  const uncertainty = lossUncertainty(sheet, ...weighed);
  const onDryBasis = reckon(uncertainty, "*", reckon(reckon(1, "+", moistureDry), "^", 2));
  return [
    { name: "moistureWet", cell: moistureWet, value: onceNumbers(weighed, retort("MOISTURE.WET", ...weighed)), uncertainty },
    { name: "moistureDry", cell: moistureDry, value: onceNumbers(weighed, retort("MOISTURE.DRY", ...weighed)), uncertainty: onDryBasis },
  ];
}

function ofCharring(sheet: RunSheet, { vessel, dry }: SampleCells, { char, shares }: Charring): Reckoned[] {
  const weighed = [vessel, dry, char] as const;
  const { volatile, charYield } = shares;
  const uncertainty = lossUncertainty(sheet, ...weighed);
  return [
    { name: "volatile", cell: volatile, value: onceNumbers(weighed, retort("VOLATILEFRACTION", ...weighed)), uncertainty },
    { name: "charYield", cell: charYield, value: onceNumbers(weighed, retort("CHARYIELD", ...weighed)), uncertainty },
  ];
}

function ofAshing(sheet: RunSheet, { vessel, dry }: SampleCells, { char }: Charring, { ash, shares }: Ashing): Reckoned[] {
  const weighed = [vessel, dry, char, ash] as const;
  const isInOrder = fn("AND", is(vessel, "<=", ash), is(ash, "<=", char), is(char, "<=", dry));
  const ashOfDry = reckon(reckon(ash, "-", vessel), "/", reckon(dry, "-", vessel));
  return [
    {
      name: "charYieldAshFree",
      cell: shares.charYieldAshFree,
      value: onceNumbers(weighed, retort("CHARYIELD", ...weighed)),
      uncertainty: lossUncertainty(sheet, ash, dry, char),
    },
    {
      name: "ash",
      cell: shares.ash,
      value: onceNumbers(weighed, when(isInOrder, ashOfDry, resultWords.checkAsh)),
      uncertainty: lossUncertainty(sheet, vessel, dry, ash),
    },
  ];
}

const lossUncertainty = ({ weighingUncertainty }: RunSheet, vessel: Cell, before: Cell, after: Cell): Call =>
  retort("LOSSFRACTION.U", vessel, before, after, weighingUncertainty);
