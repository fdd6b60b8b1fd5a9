import type { CellInput } from "../Input";
import { BELOW_ZERO, isNothing, numberInput, numberOrWord } from "../number";
import type { Bound, NumberRule } from "../NumberRule";

// A percentage typed as a plain number is refused and never rescaled: 1 for 1 % and 1 for the whole look alike, so a program
// that guesses is wrong without a word.
const upToOne: readonly Bound[] = [BELOW_ZERO, { above: 1, says: "above 1 and looks like a percentage" }];
const belowOne: readonly Bound[] = [BELOW_ZERO, { from: 1, says: "not below 1 and looks like a percentage" }];

/** A share from 0 to 1. 0 is a real value here. */
export const fraction = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "",
    called: "a fraction",
    advice: "Type a share from 0 to 1, such as 0.35 or 35%.",
    zeroIsBlank: false,
    bounds: upToOne,
  });

const elementShare: NumberRule = {
  unit: "",
  called: "a fraction",
  advice: "Type a share of the mass from 0 to 1, such as 0.487 or 48.7%.",
  zeroIsBlank: false,
  zeroIsNone: true,
  bounds: upToOne,
};

/**
 * The share of an element in a sample's mass, 0 to 1. An element can be absent, so 0 is a value; the host hands a blank
 * cell over as 0 too, and then it counts as 0. A row of nothing but these and blanks counts as not filled in.
 */
export const massFraction = (about: string): CellInput<number> => ({
  ...numberInput(about, elementShare),
  isBlank: (value) => isNothing(value) || value === 0,
});

/** The share of an element that no such sample is without (carbon in a fuel), so that 0 is a blank cell. */
export const presentMassFraction = (about: string): CellInput<number> => numberInput(about, { ...elementShare, zeroIsBlank: true });

/** The word that says a sample leaves no ash, which reads as 0. */
export const NO_ASH = "none";

/**
 * An ash content as a fraction below 1, or the word "none". A 0 is taken as not weighed: ash is weighed last, and what
 * is not yet ash would be counted as carbon.
 */
export const ashShare = (about: string): CellInput<number> =>
  numberOrWord(
    about,
    {
      unit: "",
      called: "an ash content",
      advice: `Type a fraction such as 0.012 or 1.2%, or "${NO_ASH}".`,
      zeroIsBlank: true,
      bounds: belowOne,
    },
    NO_ASH,
  );

/** A moisture content as a fraction, from 0. 0 is a real moisture; the upper bound depends on the basis, so the computation sets it. */
export const moistureContent = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "",
    called: "a moisture content",
    advice: "Type a fraction such as 0.35 or 35%.",
    zeroIsBlank: false,
    bounds: [BELOW_ZERO],
  });

const ofMoist: NumberRule = {
  unit: "",
  called: "a moisture content",
  advice: "Type a fraction of the moist sample, such as 0.08 or 8%; 0 if dry.",
  zeroIsBlank: false,
  zeroIsNone: true,
  bounds: belowOne,
};

/** A moisture content on the wet basis, 0 to below 1. A dried sample has none, so 0 is a value and a blank cell counts as 0. */
export const wetMoisture = (about: string): CellInput<number> => numberInput(about, ofMoist);

/** The same for a sample that is moist by its name (as received, as analysed), so that 0 is a blank cell. */
export const presentMoisture = (about: string): CellInput<number> =>
  numberInput(about, { ...ofMoist, advice: "Type a fraction of the moist sample, such as 0.08 or 8%.", zeroIsBlank: true });
