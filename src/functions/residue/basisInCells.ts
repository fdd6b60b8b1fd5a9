import { NO_ASH } from "../../inputs/kinds/shares";
import { waterShare } from "../../weighing/waterShare";
import { operand } from "../operand";
import { wordInCells, type WordCase } from "../wordInCells";
import { neededInCells } from "./neededInCells";

interface BasisTexts {
  readonly value: string;
  readonly from: string;
  readonly to: string;
  readonly moistureReceived: string;
  readonly moistureAnalysis: string;
  readonly ash: string;
  readonly quantity: string;
}

/** The conversion with built-in functions: through the dry sample, the water's own hydrogen or oxygen taken out and put back. */
export function basisInCells({ value, from, to, quantity, ...composition }: BasisTexts): string {
  const [dryFrom, dryTo] = [dryGramsInCells(from, composition), dryGramsInCells(to, composition)];
  const inWater = wordInCells(quantity, [waterCase("hydrogen"), waterCase("oxygen")], "0");
  if (inWater === "0") return `${operand(value)}/${operand(dryFrom)}*${operand(dryTo)}`;
  const moist = (basis: string): string => `${operand(inWater)}*${operand(moistureInCells(basis, composition))}`;
  return `(${operand(value)}-${moist(from)})/${operand(dryFrom)}*${operand(dryTo)}+${moist(to)}`;
}

type CompositionTexts = Pick<BasisTexts, "moistureReceived" | "moistureAnalysis" | "ash">;

const waterCase = (element: string): WordCase => [element, String(waterShare(element))];

const moistureInCells = (basis: string, { moistureReceived, moistureAnalysis }: CompositionTexts): string =>
  wordInCells(
    basis,
    [
      ["as received", neededInCells(moistureReceived)],
      ["as analysed", neededInCells(moistureAnalysis)],
    ],
    "0",
  );

function dryGramsInCells(basis: string, composition: CompositionTexts): string {
  const moisture = moistureInCells(basis, composition);
  const moist = moisture === "0" ? "1" : `1-${moisture}`;
  return wordInCells(basis, [["ash-free", `1/(1-${neededInCells(composition.ash, NO_ASH)})`]], moist);
}
