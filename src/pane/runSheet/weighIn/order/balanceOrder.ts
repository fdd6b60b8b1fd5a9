import type { BalanceCells } from "../../../../explanation/runSheet/RunCells";
import { weighInWords } from "../../../../problems/runsheet/weighInWords";
import { PLACES } from "../../../../runsheet/sheet/balanceRows";
import { isBlank, step, type Step, type Work } from "./Step";

/**
 * Boxes of a balance check in the order of the work: what the weight is, round by round its reading on its day and the zero after it,
 * and the corners once the first round is in. Rounds left out above others stay so.
 */
export function* balanceOrder({ cells }: Work<BalanceCells>): Generator<Step> {
  const { setup, rows, round } = cells.sheet;
  const { first, last } = rows.rounds;
  const every = Array.from({ length: last - first + 1 }, (_, index) => first + index);
  const isFilled = (row: number): boolean => !isBlank(cells, round(row).reading);
  const latest = every.filter(isFilled).at(-1) ?? 0;
  yield step(cells, setup.value, { unit: "g" });
  if (latest === 0) yield step(cells, setup.known, { isOptional: true, unit: "g" });
  for (const row of every.filter((one) => one >= latest)) {
    const { reading, zero, date, off } = round(row);
    if (latest > 0 && row === latest + 1) yield* corners({ cells });
    yield step(cells, reading, { clock: date, change: { at: off, said: weighInWords.offWeight } });
    if (isFilled(row)) yield step(cells, zero, { isOptional: true });
  }
  if (latest > 0) yield* corners({ cells });
}

/** The centre and the four corners of the pan, once: those of a later day are typed over on the sheet. */
function* corners({ cells }: Pick<Work<BalanceCells>, "cells">): Generator<Step> {
  const { corner } = cells.sheet;
  const over = PLACES.map((place) => corner(place).box).filter((at) => isBlank(cells, at));
  for (const place of PLACES) {
    const { box, off } = corner(place);
    const change = { at: off, said: weighInWords.offCentre };
    yield step(cells, box, { isOptional: true, change, skips: [{ words: weighInWords.noCorners, over }] });
  }
}
