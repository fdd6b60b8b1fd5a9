import * as words from "../../src/problems/sharing/plainCellProblems";

const {
  WHY_FIXED,
  refusedInputs,
  weighingsOutOfOrder,
  fixedOn,
  fixedUnfollowed,
  rowRefused,
  notAboveVessel,
  aboveFirst,
  timeNotAfter,
  timeNotThere,
  changedSinceShared,
  NO_FORM,
  withoutForm,
  ...sentences
} = words;

test("what plain cells say where a function refuses", () => {
  expect(sentences).toEqual({
    emptyAfterDrying: "dry is not above vessel: swapped cells or another vessel",
    looksLikePercentage: "moisture looks like a percentage: type 0.35 or 35%",
    nothingBurntAway: "ash is the same as dry: a repeated cell",
    moistureAboveWholeLoss: "moisture is more than the whole loss on heating",
    moreThanTheSample: "ash and moisture come to more than the sample",
    sharesAboveWhole: "the shares come to more than the whole: check the bases",
    noConversion: "this quantity does not convert between these bases",
    basisIncomplete: "a moisture or the ash that a basis rests on is missing",
    lessThanItsWater: "value is less than its moisture holds",
    wholeOrMoreThere: "the result would be the whole or more: a percentage, or another basis",
    zerosTooFarApart: "the zeros are more than a tenth of the reading apart",
    timesIncomplete: "the times are incomplete: give all three or none",
    startTimeNotClear: "timeBefore is blank or 0 beside clock times: type it",
    timeNotInBetween: "time is not between timeBefore and timeAfter",
    gainedMoreThanScatter: "the sample would have gained more than the weighings scatter",
    blankTooLarge: "blankLoss is more than the loss: another cell or unit",
    outsideAirFormula: "temperature, pressure or humidity is outside the range of the formula",
    uncertaintyNotBelow: "u is not below the weighing: another unit",
    uncertaintyBelowStep: "u is below what rounding to the display step makes",
    balanceTooCoarseHere: "u is more than a tenth of the sample: the balance is too coarse to tell",
    oneComposition: "give a formula or an analysis, not both",
    ashBesideSolids: "ash was weighed and the formula leaves solids too",
    analysisIncomplete: "the analysis needs carbon and hydrogen",
    analysisOpen: "the fractions and ash do not come near 1",
    takesUpNothing: "there is more oxygen than burning needs",
    iceAtTheStart: "from is below 0 °C, where the water is ice",
    waterGoneAlready: "from is not below 100 °C, where the water has gone already",
    notHeatedHere: "to is not above from: swapped cells",
    ovenTooHot: "to is above 300 °C, where wood chars",
    vesselIncomplete: "vesselMass and vesselHeat: give both or neither",
    rampIncomplete: "from and rate: a ramp needs both",
    neitherHoldNorRamp: "minutes is left out and there is no ramp: nothing was held",
    rampDoesNotRise: "from is not below temperature",
    lengthGrown: "after is more than before: swapped cells",
    lengthHalved: "after is less than half of before: two units or two marks",
    trayNotLess: "tray is not less than dry",
    lighterSoaked: "saturated is less than dry: swapped cells",
    tooMuchWaterTaken: "saturated holds more than 1.5 g of water for each gram: wipe the piece",
    measureNotAboveVessel: "full is not more than vessel: swapped cells",
    slipLighterThanWater: "the slip is lighter than water: volume in mL, and the empty measure",
    slipDenserThanGrains: "the slip is denser than its grains: volume in mL, and the density in kg/m³",
    blankNotBelow: "blank is not below volume: swapped cells",
    moreAcidThanWhole: "the acid is more than the sample holds: mL, mol/L and the dilution",
    lossNotBetween: "the loss lies outside those of both substances",
    nothingStays: "rawLoss is the whole: nothing would stay",
    productLosesMoreThanRaw: "productLoss is more than rawLoss: swapped cells",
    rangesDoNotFit: "the ranges differ in size: give ranges of one size",
    dateForMinutes: "times: a date stands where minutes are wanted",
    clockForMinutes: "times: clock times stand where minutes are wanted",
    needsTimes: "times are needed for this criterion or interval",
    limitOutOfBounds: "limit: missing, a percentage, or wider than the sample allows",
    notOneDrySample: "the fractions do not come near 1: give one dry basis, ash and all",
    dryFractionsAboveWhole: "hydrogen, oxygen and nitrogen come to more than the dry sample",
    hydrogenTakesAll: "higherDry is less than the water from the hydrogen takes away: dry, and in MJ/kg",
    moistureAboveItsElements: "the moisture holds more hydrogen or oxygen than the sample",
    carbonatesHoldAllCarbon: "carbonateCO2 holds all the carbon of the sample, or more",
    closedNeedsMinutes: "minutes is left out, and in a closed room a gas rises without end",
    moreGasThanRoom: "the gas would be more than the room holds",
    yieldLeavesNothing: "yield leaves nothing for the vapour",
    charHoldsMoreThanFeed: "the char would hold more of an element than the feed brought",
    productsAboveTheFeed: "the products weigh more than the feed",
    charAboveTheDryFeed: "char is more than the dry feed",
    uncertaintyTooFineHere: "u is finer than a spreadsheet holds the value",
    calibrationIncomplete: "readings and references differ in number, or are fewer than two",
    calibrationFarOff: "a reference is more than 50 °C from its reading, or the points do not rise together",
    outsideThePoints: "reading is outside the calibration points: nothing is guessed there",
    oneTemperatureAlone: "temperatures has fewer than two: nothing is heated",
    scheduleDoesNotFit: "rates or holds has more cells than there are steps, or a step has no rate",
    columnsOfRateDiffer: "times and temperatures differ in number",
    timeNotAfterBefore: "times do not rise from row to row",
    windowEmptyOrReversed: "fewer than three readings lie from from to to, or from is not below to",
    notOneHydrate: "the salt alone weighs no more than the vessel",
    moreRowsNow: "the number of rows has changed since this was shared",
  });
});

test("sentences that name an input, a row or a day", () => {
  expect(refusedInputs(["moist", "dry"])).toBe("moist, dry: blank, not of the right kind, or out of bounds");
  expect(weighingsOutOfOrder(["vessel", "dry", "moist"])).toBe("vessel <= dry <= moist does not hold: swapped cells or another vessel");
  expect(fixedOn("2027-01-15")).toBe("fixed on 2027-01-15: inputs changed");
  expect(fixedUnfollowed("2027-01-15")).toBe("fixed on 2027-01-15: its inputs cannot be followed");
  expect([rowRefused(3), notAboveVessel(3), aboveFirst(3), timeNotAfter(3), timeNotThere(3)]).toEqual([
    "row 3: blank, not a number, or out of bounds",
    "row 3 is not above vessel",
    "row 3 is more than a tenth above row 1: another vessel or a wrong cell",
    "times: row 3 is not later than the row before",
    "times: row 3 is blank",
  ]);
  expect(changedSinceShared(["formula"])).toBe("formula: not what it was when this was shared, and this form holds for that alone");
});

test("why a call is shared as its value", () => {
  expect(WHY_FIXED).toEqual({
    unreadable: "the formula cannot be taken apart",
    unknownFunction: "a function that this version of Retort does not have",
    noForm: "this function has no form in built-in functions",
    noRoom: "its answer may need cells beside it that are not free",
    programName: "a printed area or another name that programs keep for themselves is no place for its form",
    ruleStale: "it compares entries with a cell that may come to be fixed, and a text there would admit anything",
    argumentForm: "these arguments have no form in built-in functions",
    tooLong: "written out it is longer than a cell holds",
    unknownName: "a name or table in it is not known here",
    unknownSize: "the size of a range in it cannot be told",
    random: "a random number in it would be drawn more than once",
    newerFunction: "it uses a function newer than Excel 2016",
    severalSheets: "it works on several sheets at once",
    notShared: "it refers to a sheet that is not shared",
    connection: "it reads through a connection, and the file carries none",
    circular: "it is calculated from itself",
    unseen: "it refers to cells that its text does not show",
    ruleForm: "it has no form in one formula as a rule may hold it",
    goneName: "it uses a defined name that goes",
  });
});

test("why a function has no form in built-in functions", () => {
  expect(NO_FORM).toEqual({
    endOfCurves: "It follows each curve that the weighings allow to its end, thousands of fits, which no number of cells can repeat.",
    fittedCurve: "Its curve is found by search, and what a solver finds in cells stands there as numbers that do not follow the weighings.",
    rowsByGroup: "How many rows it fills depends on what the groups are called, and cells do not grow by themselves.",
  });
  expect(withoutForm("Why.")).toBe("None. Why. Shared as plain cells it keeps its value, which says so once an input changes.");
});
