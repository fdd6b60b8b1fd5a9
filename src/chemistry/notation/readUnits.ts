import { numberApart, percentSign, spaceInside } from "../../problems/formulaProblems";
import { openingKind } from "./bracketKinds";
import { chargeSign } from "./chargeSign";
import { countDigit } from "./countDigit";
import { isCapital } from "./isCapital";
import { isUnitAt } from "./isUnitAt";
import { readAtom } from "./readAtom";
import { readGroup } from "./readGroup";
import type { Reading } from "./Reading";
import { readIsotope } from "./readIsotope";
import { isSpace, skipSpaces } from "./skipSpaces";

/**
 * Reads symbols and brackets in a row. Spaces may stand between single ones (C6 H12 O6), as in Hill's order.
 * @throws InputProblem
 */
export function readUnits(reading: Reading): void {
  const { text } = reading;
  let sinceSpace = 0;
  let space = -1;
  for (;;) {
    const code = text.charCodeAt(reading.at);
    const isSymbol = isCapital(code);
    if (!isSymbol && isSpace(code)) {
      const next = skipSpaces(text, reading.at);
      if (!isUnitAt(text, next)) return refuseNumberApart(reading, next);
      if (sinceSpace !== 1) throw spaceInside(reading.spot(reading.at));
      space = reading.at;
      sinceSpace = 0;
      reading.at = next;
      continue;
    }
    if (!isSymbol && !isUnitAt(text, reading.at)) return;
    if (space >= 0 && sinceSpace > 0) throw spaceInside(reading.spot(space));
    if (isSymbol) readAtom(reading);
    else if (openingKind(code) >= 0) readGroup(reading);
    else readIsotope(reading);
    sinceSpace++;
  }
}

function refuseNumberApart(reading: Reading, index: number): void {
  const { text } = reading;
  const amount = countDigit(text.charCodeAt(index)) >= 0 ? /^[\d.,]+/.exec(text.slice(index))?.[0] : undefined;
  if (amount === undefined) return;
  const next = skipSpaces(text, index + amount.length);
  if (text.charAt(next) === "%") throw percentSign(reading.spot(next));
  if (chargeSign(text.charAt(next)) === 0) throw numberApart(reading.spot(index), amount);
}
