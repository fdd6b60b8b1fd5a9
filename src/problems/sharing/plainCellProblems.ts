// What the plain form of a call says where the function refuses. It stands inside VALUE(...) in the cell formula, so that the cell shows
// #VALUE! as the function does, and whoever selects the cell reads why.

/** @param names of the inputs that are looked at */
export const refusedInputs = (names: readonly string[]): string => `${names.join(", ")}: blank, not of the right kind, or out of bounds`;

/** @param names in the order that the weighings must have, the lightest first */
export const weighingsOutOfOrder = (names: readonly string[]): string => `${names.join(" <= ")} does not hold: swapped cells or another vessel`;

export const emptyAfterDrying = "dry is not above vessel: swapped cells or another vessel";
export const looksLikePercentage = "moisture looks like a percentage: type 0.35 or 35%";
export const nothingBurntAway = "ash is the same as dry: a repeated cell";
export const moistureAboveWholeLoss = "moisture is more than the whole loss on heating";
export const moreThanTheSample = "ash and moisture come to more than the sample";
export const sharesAboveWhole = "the shares come to more than the whole: check the bases";
export const noConversion = "this quantity does not convert between these bases";
export const basisIncomplete = "a moisture or the ash that a basis rests on is missing";
export const lessThanItsWater = "value is less than its moisture holds";
export const wholeOrMoreThere = "the result would be the whole or more: a percentage, or another basis";
export const zerosTooFarApart = "the zeros are more than a tenth of the reading apart";
export const timesIncomplete = "the times are incomplete: give all three or none";
export const startTimeNotClear = "timeBefore is blank or 0 beside clock times: type it";
export const timeNotInBetween = "time is not between timeBefore and timeAfter";
export const gainedMoreThanScatter = "the sample would have gained more than the weighings scatter";
export const blankTooLarge = "blankLoss is more than the loss: another cell or unit";
export const outsideAirFormula = "temperature, pressure or humidity is outside the range of the formula";
export const uncertaintyNotBelow = "u is not below the weighing: another unit";
export const uncertaintyBelowStep = "u is below what rounding to the display step makes";
export const balanceTooCoarseHere = "u is more than a tenth of the sample: the balance is too coarse to tell";
export const oneComposition = "give a formula or an analysis, not both";
export const ashBesideSolids = "ash was weighed and the formula leaves solids too";
export const analysisIncomplete = "the analysis needs carbon and hydrogen";
export const analysisOpen = "the fractions and ash do not come near 1";
export const takesUpNothing = "there is more oxygen than burning needs";
export const iceAtTheStart = "from is below 0 °C, where the water is ice";
export const waterGoneAlready = "from is not below 100 °C, where the water has gone already";
export const notHeatedHere = "to is not above from: swapped cells";
export const ovenTooHot = "to is above 300 °C, where wood chars";
export const vesselIncomplete = "vesselMass and vesselHeat: give both or neither";
export const rampIncomplete = "from and rate: a ramp needs both";
export const neitherHoldNorRamp = "minutes is left out and there is no ramp: nothing was held";
export const rampDoesNotRise = "from is not below temperature";
export const lengthGrown = "after is more than before: swapped cells";
export const lengthHalved = "after is less than half of before: two units or two marks";
export const trayNotLess = "tray is not less than dry";
export const lighterSoaked = "saturated is less than dry: swapped cells";
export const tooMuchWaterTaken = "saturated holds more than 1.5 g of water for each gram: wipe the piece";
export const measureNotAboveVessel = "full is not more than vessel: swapped cells";
export const slipLighterThanWater = "the slip is lighter than water: volume in mL, and the empty measure";
export const slipDenserThanGrains = "the slip is denser than its grains: volume in mL, and the density in kg/m³";
export const blankNotBelow = "blank is not below volume: swapped cells";
export const moreAcidThanWhole = "the acid is more than the sample holds: mL, mol/L and the dilution";
export const lossNotBetween = "the loss lies outside those of both substances";
export const nothingStays = "rawLoss is the whole: nothing would stay";
export const productLosesMoreThanRaw = "productLoss is more than rawLoss: swapped cells";

export const notOneDrySample = "the fractions do not come near 1: give one dry basis, ash and all";
export const dryFractionsAboveWhole = "hydrogen, oxygen and nitrogen come to more than the dry sample";
export const hydrogenTakesAll = "higherDry is less than the water from the hydrogen takes away: dry, and in MJ/kg";
export const moistureAboveItsElements = "the moisture holds more hydrogen or oxygen than the sample";
export const carbonatesHoldAllCarbon = "carbonateCO2 holds all the carbon of the sample, or more";
export const closedNeedsMinutes = "minutes is left out, and in a closed room a gas rises without end";
export const moreGasThanRoom = "the gas would be more than the room holds";
export const yieldLeavesNothing = "yield leaves nothing for the vapour";
export const charHoldsMoreThanFeed = "the char would hold more of an element than the feed brought";
export const productsAboveTheFeed = "the products weigh more than the feed";
export const charAboveTheDryFeed = "char is more than the dry feed";
export const uncertaintyTooFineHere = "u is finer than a spreadsheet holds the value";
export const calibrationIncomplete = "readings and references differ in number, or are fewer than two";
export const calibrationFarOff = "a reference is more than 50 °C from its reading, or the points do not rise together";
export const outsideThePoints = "reading is outside the calibration points: nothing is guessed there";
export const oneTemperatureAlone = "temperatures has fewer than two: nothing is heated";
export const scheduleDoesNotFit = "rates or holds has more cells than there are steps, or a step has no rate";
export const columnsOfRateDiffer = "times and temperatures differ in number";
export const timeNotAfterBefore = "times do not rise from row to row";
export const windowEmptyOrReversed = "fewer than three readings lie from from to to, or from is not below to";
export const notOneHydrate = "the salt alone weighs no more than the vessel";

/** @param names of the inputs whose cells the form was written for */
export const changedSinceShared = (names: readonly string[]): string =>
  `${names.join(", ")}: not what it was when this was shared, and this form holds for that alone`;

export const rangesDoNotFit = "the ranges differ in size: give ranges of one size";

/** Why a call is shared as its value, for the calculation record. */
export const WHY_FIXED = {
  unreadable: "the formula cannot be taken apart",
  unknownFunction: "a function that this version of Retort does not have",
  noForm: "this function has no form in built-in functions",
  argumentForm: "these arguments have no form in built-in functions",
  tooLong: "written out it is longer than a cell holds",
  unknownName: "a name or table in it is not known here",
  unknownSize: "the size of a range in it cannot be told",
  noRoom: "its answer may need cells beside it that are not free",
  random: "a random number in it would be drawn more than once",
  newerFunction: "it uses a function newer than Excel 2016",
  severalSheets: "it works on several sheets at once",
  notShared: "it refers to a sheet that is not shared",
  connection: "it reads through a connection, and the file carries none",
  circular: "it is calculated from itself",
  unseen: "it refers to cells that its text does not show",
  ruleForm: "it has no form in one formula as a rule may hold it",
  ruleStale: "it compares entries with a cell that may come to be fixed, and a text there would admit anything",
  programName: "a printed area or another name that programs keep for themselves is no place for its form",
  goneName: "it uses a defined name that goes",
} as const;
/** Why a function has no form in built-in functions, for its page. */
export const NO_FORM = {
  endOfCurves: "It follows each curve that the weighings allow to its end, thousands of fits, which no number of cells can repeat.",
  fittedCurve: "Its curve is found by search, and what a solver finds in cells stands there as numbers that do not follow the weighings.",
  rowsByGroup: "How many rows it fills depends on what the groups are called, and cells do not grow by themselves.",
} as const;

export const withoutForm = (why: string): string => `None. ${why} Shared as plain cells it keeps its value, which says so once an input changes.`;

export type WhyFixed = keyof typeof WHY_FIXED;

/** @param date of sharing, as printed */
export const fixedOn = (date: string): string => `fixed on ${date}: inputs changed`;
/** For a cell whose text does not show what it refers to, so that nothing tells whether its value still holds. @param date of sharing, as printed */
export const fixedUnfollowed = (date: string): string => `fixed on ${date}: its inputs cannot be followed`;

/** @param row of a series, from 1 */
export const rowRefused = (row: number): string => `row ${row}: blank, not a number, or out of bounds`;
export const notAboveVessel = (row: number): string => `row ${row} is not above vessel`;
export const aboveFirst = (row: number): string => `row ${row} is more than a tenth above row 1: another vessel or a wrong cell`;
export const timeNotAfter = (row: number): string => `times: row ${row} is not later than the row before`;
export const timeNotThere = (row: number): string => `times: row ${row} is blank`;
export const dateForMinutes = "times: a date stands where minutes are wanted";
export const clockForMinutes = "times: clock times stand where minutes are wanted";
export const needsTimes = "times are needed for this criterion or interval";
export const limitOutOfBounds = "limit: missing, a percentage, or wider than the sample allows";
export const moreRowsNow = "the number of rows has changed since this was shared";
