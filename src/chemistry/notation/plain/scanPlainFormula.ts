import { SMALLEST_COUNT } from "../counts/readAmount";
import { isHydrateDot } from "../hydrates/hydrateDot";
import { endsSalts, isAlsoTwoCapitals, isChainOfCarbon, isTwoCapitalsAnywhere, isZeroDoubtful } from "./doubts";
import { canBeMassNumber, indexOf, indexOfLetters, NONE } from "./elementIndex";
import { addUp, MOST_ATOMS, multiplyFrom, plainAtoms } from "./plainAtoms";

// The formulas that fill most sheets, in one pass that makes no object:
//   formula = units { "·" units | "·" number "H2O" } [ "." [number] "H2O" ]
//   units   = unit { unit }
//   unit    = symbol [number] | "(" units ")" [number]
// What could be read another way, noted or refused is a doubt, and with the first doubt the text is left to `readFormula`, whose rules alone
// count. A doubt too many costs time; one too few would be another answer, so each is drawn wider than the rule it stands for.

const [CAPITAL_A, CAPITAL_H, CAPITAL_N, CAPITAL_O, CAPITAL_Z, SMALL_A, SMALL_Z] = [0x41, 0x48, 0x4e, 0x4f, 0x5a, 0x61, 0x7a];
const [ZERO, ONE, NINE, FULL_STOP, DOT, OPENS, CLOSES] = [0x30, 0x31, 0x39, 0x2e, 0xb7, 0x28, 0x29];
const WATER = "H2O";
const [CARBON, IODINE, URANIUM, VANADIUM] = ["C", "I", "U", "V"].map(indexOf);

// Bounds of what is scanned, narrower than those of the notation.
const LONGEST = 100;
const DEEPEST = 4;
const MOST_DIGITS = 7;

const DOUBT = -1;

// The count of a group and how many of it: 22 to 46, as in NO22 and SO46.
const TWO_COUNTS = 22;
const MOST_OF_TWO_COUNTS = 46;

const groupStart = new Uint8Array(DEEPEST);
let hasSmall = false;
let hasCount = false;
let isNoWord = false;
let hasInnerZero = false;
let hasBracket = false;
let hasDecimal = false;
let hasMassNumber = false;
let hasPartWithoutAmount = false;
/** The index after the decimal read last. */
let decimalEnd = 0;
let fullStop = -1;

const isDigit = (code: number): boolean => code >= ZERO && code <= NINE;
const isCapital = (code: number): boolean => code >= CAPITAL_A && code <= CAPITAL_Z;
const isSmall = (code: number): boolean => code >= SMALL_A && code <= SMALL_Z;
// Beyond its end a string answers NaN, which slows every other reading down.
const codeAt = (text: string, at: number): number => (at < text.length ? text.charCodeAt(at) : 0);

/** The index of the full stop that the text scanned last has for a hydrate dot; -1 for none. */
export const fullStopRead = (): number => fullStop;

/**
 * Reads a formula of the plain kind into `plainAtoms`.
 * @returns false where there is any doubt; `plainAtoms` then says nothing
 */
export function scanPlainFormula(text: string): boolean {
  plainAtoms.length = 0;
  hasSmall = hasCount = isNoWord = hasInnerZero = hasBracket = hasDecimal = hasMassNumber = hasPartWithoutAmount = false;
  fullStop = -1;
  let at = text.length <= LONGEST ? scanUnits(text, 0) : DOUBT;
  const isRow = plainAtoms.length > 1;
  while (at > 0 && at < text.length) at = scanPart(text, at);
  return (
    at > 0 &&
    !isWordDoubtful() &&
    addUp() &&
    !(plainAtoms.size === 1 && isAlsoTwoCapitals(plainAtoms.elements[0] as number)) &&
    !(hasInnerZero && (!isRow || hasBracket || hasDecimal || hasPartWithoutAmount || isZeroDoubtful())) &&
    !(hasMassNumber && !isChainOfCarbon())
  );
}

/**
 * Reads symbols and brackets from an index on.
 * @returns the index after them, or DOUBT
 */
function scanUnits(text: string, from: number): number {
  const begun = plainAtoms.length;
  let at = from;
  let depth = 0;
  // The whole number right before the symbol that comes next; 0 for none.
  let before = 0;
  // The capital right before, where it is a symbol by itself and has no number; 0 for none.
  let alone = 0;
  let isPair = false;
  let next = codeAt(text, at);
  while (at < text.length) {
    const code = next;
    next = codeAt(text, ++at);
    let first = plainAtoms.length;
    if (isCapital(code)) {
      const second = isSmall(next) ? next : 0;
      if (second !== 0) next = codeAt(text, ++at);
      const index = indexOfLetters(code, second);
      if (isPair || index === NONE || first === MOST_ATOMS || isSmall(next) || isDoubtfulAfter(index, before)) return DOUBT;
      if (second !== 0) hasSmall = true;
      // COSO4 for CoSO4: two capitals at the beginning that are also one metal, and more behind them.
      isPair = alone !== 0 && second === 0 && first <= 2 && indexOfLetters(alone, code + SMALL_A - CAPITAL_A) !== NONE;
      alone = second === 0 ? code : 0;
      plainAtoms.element[first] = index;
      plainAtoms.count[first] = 1;
      plainAtoms.length++;
    } else if (code === OPENS) {
      if (isPair || depth === DEEPEST || isUreaOrAcetone(text, at)) return DOUBT;
      groupStart[depth++] = first;
      hasBracket = true;
      if (first > 0) isNoWord = true;
      before = alone = 0;
      // (I) and (V) can be oxidation states.
      const inner = indexOfLetters(isCapital(next) ? next : CAPITAL_A, 0);
      if (inner === IODINE || inner === VANADIUM) return DOUBT;
      continue;
    } else if (code === CLOSES && depth > 0) {
      first = groupStart[--depth] as number;
      if (first === plainAtoms.length) return DOUBT;
      alone = 0;
      isPair = false;
    } else {
      at--;
      break;
    }
    before = 0;
    if (!isDigit(next)) continue;
    alone = 0;
    const start = at;
    let zeros = 0;
    while (isDigit(next)) {
      if (next === ZERO) zeros++;
      before = before * 10 + next - ZERO;
      next = codeAt(text, ++at);
    }
    // C1 at an end can be Cl, and a count of 1 is never written.
    const isOneForL = text.charCodeAt(start) === ONE && plainAtoms.element[first] === CARBON && !isCapital(next);
    if (at - start > MOST_DIGITS || isOneForL) return DOUBT;
    hasCount = true;
    if (next === FULL_STOP && !isWaterLast(text, at)) {
      const count = decimal(text, start, at, code === CLOSES ? NONE : (plainAtoms.element[first] as number));
      if (count === DOUBT) return DOUBT;
      at = decimalEnd;
      next = codeAt(text, at);
      before = 0;
      multiplyFrom(first, count);
    } else {
      if (code === CAPITAL_H ? isBehindGroup(text, start, before) : before >= TWO_COUNTS && code === CAPITAL_O && before <= MOST_OF_TWO_COUNTS)
        return DOUBT;
      if (code !== CLOSES && canBeMassNumber(before, plainAtoms.element[first] as number)) hasMassNumber = true;
      // CuSO45H2O has lost its dot.
      if (before === 1 || text.charCodeAt(start) === ZERO || (at - start > 1 && isWaterLast(text, at - 1))) return DOUBT;
      if (zeros > 0) hasInnerZero = true;
      multiplyFrom(first, before);
    }
    // More behind a count, or behind the decimals of POT1.5.
    if (at < text.length && next !== CLOSES) isNoWord = true;
  }
  return depth === 0 && plainAtoms.length > begun ? at : DOUBT;
}

/** Whether an element may be meant otherwise right behind a whole number, or behind a symbol without one. */
function isDoubtfulAfter(index: number, before: number): boolean {
  if (isAlsoTwoCapitals(index) && (plainAtoms.length > 0 || isTwoCapitalsAnywhere(index))) return true;
  // NaCI for NaCl, CU for Cu.
  if (before === 0) return plainAtoms.length > 0 && (index === IODINE || index === URANIUM);
  // K15NO3, H218O: the last digits can be the mass number of what follows them.
  hasMassNumber ||= canBeMassNumber(before % 10, index) || canBeMassNumber(before % 100, index) || canBeMassNumber(before % 1000, index);
  return false;
}

/** MgOH2 and NH42SO4 can have lost a bracket: a hydrogen's count behind an O, or two counts behind an N. */
function isBehindGroup(text: string, start: number, count: number): boolean {
  const ahead = start > 1 ? text.charCodeAt(start - 2) : 0;
  return ahead === CAPITAL_O || (ahead === CAPITAL_N && count > TWO_COUNTS);
}

/** Co(NH2)2 and Co(CH3)2 are urea and acetone with a slip. */
const isUreaOrAcetone = (text: string, inside: number): boolean =>
  plainAtoms.length === 1 &&
  isAlsoTwoCapitals(plainAtoms.element[0] as number) &&
  (text.startsWith("NH2)", inside) || text.startsWith("CH3)", inside));

/** Letters alone, and capitals with a number behind them, can be a word or an abbreviation, TBD, POT3, also in a bracket. */
const isWordDoubtful = (): boolean => !isNoWord && !(hasCount && (hasSmall || plainAtoms.length === 1));

/**
 * Reads a hydrate dot and the part behind it. Only water takes an amount, and only water stands behind a full stop.
 * @returns the index after the part, or DOUBT
 */
function scanPart(text: string, dot: number): number {
  const code = text.charCodeAt(dot);
  const start = dot + 1;
  let at = start;
  let amount = 0;
  while (isDigit(codeAt(text, at))) amount = amount * 10 + text.charCodeAt(at++) - ZERO;
  if (at - start > MOST_DIGITS) return DOUBT;
  if (code === FULL_STOP) {
    // A second mark, or a decimal, could change what the full stop means.
    if (fullStop >= 0 || hasDecimal || !isWaterLast(text, dot)) return DOUBT;
    fullStop = dot;
  } else if (code !== DOT) return DOUBT;
  else if (at > start && codeAt(text, at) === FULL_STOP) {
    amount = decimal(text, start, at, indexOf("H"));
    at = decimalEnd;
  }
  const isAmount = at > start;
  if (!isAmount) hasPartWithoutAmount = true;
  if (isAmount && (amount <= 0 || isZeroFirst(text, start) || !text.startsWith(WATER, at))) return DOUBT;
  const first = plainAtoms.length;
  const end = scanUnits(text, at);
  if (isAmount) multiplyFrom(first, amount);
  return end;
}

const isZeroFirst = (text: string, start: number): boolean => text.charCodeAt(start) === ZERO && text.charCodeAt(start + 1) !== FULL_STOP;

/** True where a whole number, or none, and water are all that follows a mark. */
function isWaterLast(text: string, mark: number): boolean {
  if (!text.endsWith(WATER)) return false;
  for (let at = mark + 1; at < text.length - WATER.length; at++) if (!isDigit(text.charCodeAt(at))) return false;
  return true;
}

/**
 * The number with a decimal point at an index; where it ends is left in `decimalEnd`.
 * @returns DOUBT where the point can be a hydrate dot, and for what the reader might refuse
 */
function decimal(text: string, start: number, point: number, index: number): number {
  let digits = Number(text.slice(start, point));
  let at = point + 1;
  let scale = 1;
  while (isDigit(codeAt(text, at))) {
    digits = digits * 10 + text.charCodeAt(at++) - ZERO;
    scale *= 10;
  }
  hasDecimal = true;
  decimalEnd = at;
  // Up to here one division rounds as Number() does.
  const isExact = scale > 1 && digits <= Number.MAX_SAFE_INTEGER;
  const value = digits / scale;
  if (!isExact || value < SMALLEST_COUNT || isZeroFirst(text, start) || codeAt(text, at) === FULL_STOP) return DOUBT;
  if (value < 1) return value;
  // Behind a group, or what salts end in, a decimal can be a dot that lost what follows; before the last H, water typed halfway.
  const isSalt = index === NONE || endsSalts(index);
  const isHalfWater = at === text.length - 1;
  return isSalt || isHalfWater || (at < text.length && !isBeforeDecimal(text, at) && isHydrateDot(text, point)) ? DOUBT : value;
}

/** True where a symbol with a decimal below 1 stands at an index: O0.66 is in nothing that a hydrate dot joins. */
const isBeforeDecimal = (text: string, at: number): boolean => text.startsWith("0.", isSmall(codeAt(text, at + 1)) ? at + 2 : at + 1);
