import { BLANK } from "./CellValue";
import { column } from "./column";
import type { ColumnInput } from "./Input";
import type { NumberRule } from "./scalar";
import { belowZero } from "./scalar";

const elapsed: NumberRule = {
  unit: "min",
  called: "a time in minutes",
  advice: "Give minutes.",
  zeroIsBlank: false,
  broken: belowZero,
};

/**
 * A column of times in minutes, in the order of the readings. 0 is a real time in the first row alone: later rows can
 * only be later, so a 0 there is the host's way of handing over a blank cell.
 */
export const minutes = (about: string): ColumnInput<readonly number[]> => {
  const plain = column(about, elapsed);
  return {
    ...plain,
    read: (cells, argument) =>
      plain.read(
        cells.map((cell, index) => (index > 0 && cell === 0 ? BLANK : cell)),
        argument,
      ),
  };
};
