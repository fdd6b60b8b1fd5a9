import { indexOf, NONE } from "./elementIndex";
import { plainAtoms } from "./plainAtoms";

// What of a scanned formula can be meant otherwise, by its elements and their totals. Each question is asked wider than the reader's rule.

const [HYDROGEN, CARBON, NITROGEN, OXYGEN, SULFUR, HOLMIUM] = ["H", "C", "N", "O", "S", "Ho"].map(indexOf);

function flags(symbols: readonly string[]): Uint8Array {
  const flagged = new Uint8Array(NONE);
  for (const symbol of symbols) flagged[indexOf(symbol)] = 1;
  return flagged;
}

const ends = flags(["N", "O", "P", "S", "F", "Cl", "Br", "I"]);
const twoCapitals = flags(["Co", "Cs", "Hf", "Ho", "Sc", "Bi", "Ni"]);

/** What salts end in: behind it a decimal can be a hydrate dot. */
export const endsSalts = (index: number): boolean => ends[index] === 1;

/** CaCo3 for CaCO3: where these do not begin the formula, or stand alone, two capitals can be meant. */
export const isAlsoTwoCapitals = (index: number): boolean => twoCapitals[index] === 1;

/** KHo for KHO: the one of them that can be meant so at the beginning too. */
export const isTwoCapitalsAnywhere = (index: number): boolean => index === HOLMIUM;

// Carbon binds four hydrogens or two oxygens; the reader's own rules are the same.
const HYDROGENS_PER_ATOM = 4;
const HYDROGENS_PER_OXYGEN = 2;
// Fewer hydrogens than this hold no chain together.
const CARBONS_PER_HYDROGEN = 3;

/**
 * Whether a count with a 0 in it can be a slip, such as H20 or Fe203, in a formula that begins with a row of symbols: not among whole counts
 * with oxygen and no excess of hydrogen, where nothing but water stands behind a dot.
 */
export function isZeroDoubtful(): boolean {
  const { size, elements, totals } = plainAtoms;
  let [oxygen, hydrogen, others] = [0, 0, 0];
  for (let place = 0; place < size; place++) {
    const total = totals[place] as number;
    if (elements[place] === HYDROGEN) hydrogen = total;
    else others += total;
    if (elements[place] === OXYGEN) oxygen = total;
  }
  return oxygen === 0 || hydrogen > HYDROGENS_PER_ATOM * others;
}

/**
 * Whether a formula holds carbon, as much hydrogen and oxygen as it binds, and at most nitrogen and sulfur besides: what is counted in dozens
 * there is atoms. The reader holds a mass number to be meant where the oxidation states of the counts do not add up, which here they do.
 */
export function isChainOfCarbon(): boolean {
  const { size, elements, totals } = plainAtoms;
  let [carbon, hydrogen, oxygen] = [0, 0, 0];
  for (let place = 0; place < size; place++) {
    const total = totals[place] as number;
    if (elements[place] === CARBON) carbon = total;
    else if (elements[place] === HYDROGEN) hydrogen = total;
    else if (elements[place] === OXYGEN) oxygen = total;
    else if (elements[place] !== NITROGEN && elements[place] !== SULFUR) return false;
  }
  const binds = HYDROGENS_PER_ATOM * carbon;
  const isHeld = CARBONS_PER_HYDROGEN * hydrogen >= carbon && hydrogen <= binds && HYDROGENS_PER_OXYGEN * oxygen <= binds + hydrogen;
  return carbon > 0 && isHeld;
}
