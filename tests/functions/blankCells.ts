/** What a blank cell and a 0 do in one input; the sentences stand in src/problems/blankCells. */
export type BlankCellRule =
  /** Needed, 0 cannot be meant: both are refused as missing. */
  | "missing"
  /** Needed, 0 is a value: 0 is 0, and what is told from 0 is refused as missing. */
  | "0 is 0"
  /** The same for a share of an element; a row with nothing else filled in stays empty. */
  | "0 is 0, alone it is an empty row"
  /** Optional: both are the same as left out. */
  | "left out"
  /** Optional, 0 is a value that says something else than leaving out: what is told from 0 is the same as left out. */
  | "0 is 0, else left out"
  /** The empty vessel of a series: a 0 is refused and says what to type; only nothing at all leaves it out. */
  | "0 is refused"
  /** Answered in words that begin with the input's name. */
  | "in words"
  | "column of weighings"
  | "column of times"
  | "column of times, blank as left out"
  | "column of results"
  /** A column of figures in which 0 can be meant: 0 is 0, and 0 beside 0 at the end a blank row. */
  | "column of points"
  /** A column whose first cell may be blank; elsewhere a blank and a 0 are refused with their row. */
  | "column of rates"
  /** A column in which a blank and a 0 are none. */
  | "column of holds"
  /** A column of names; a blank beside a value is refused with its row. */
  | "column of names";

/** The rule for each input of each function, as the help and the functions themselves must have it. */
export const blankCells: Readonly<Record<string, Readonly<Record<string, BlankCellRule>>>> = {
  MOLARMASS: { formula: "missing" },
  ATOMS: { formula: "missing" },
  "FORMULA.CHECK": { formula: "missing" },
  MASSFRACTION: { formula: "missing", part: "missing", what: "left out" },
  ATOMICWEIGHT: { symbol: "missing", what: "left out" },
  "MOLARMASS.U": { formula: "missing" },
  OXYGENDEMAND: { formula: "missing", nitrogenTo: "left out", sulfurTo: "left out" },
  "OXYGENDEMAND.ULTIMATE": {
    carbon: "missing",
    hydrogen: "0 is 0, alone it is an empty row",
    oxygen: "0 is 0, alone it is an empty row",
    nitrogen: "left out",
    sulfur: "left out",
    chlorine: "left out",
  },
  AIRDEMAND: { oxygen: "missing", oxygenInAir: "left out" },
  "BURN.EQUATION": { formula: "missing" },
  "BURN.PRODUCTS": { formula: "missing", excessAir: "0 is 0, else left out" },
  "BURN.COMPARE": {
    vessel: "missing",
    dry: "missing",
    char: "missing",
    ash: "left out",
    formula: "left out",
    carbon: "left out",
    hydrogen: "left out",
    oxygen: "left out",
    nitrogen: "left out",
    sulfur: "left out",
  },
  "MOISTURE.WET": { vessel: "missing", moist: "missing", dry: "missing" },
  "MOISTURE.DRY": { vessel: "missing", moist: "missing", dry: "missing" },
  "MOISTURE.CONVERT": { moisture: "0 is 0", from: "missing", to: "missing" },
  CONSTANTWEIGHT: {
    weights: "column of weighings",
    limit: "left out",
    criterion: "left out",
    times: "column of times, blank as left out",
    vessel: "0 is refused",
    readability: "left out",
    interval: "left out",
  },
  "CONSTANTWEIGHT.STEPS": {
    weights: "column of weighings",
    limit: "left out",
    criterion: "left out",
    times: "column of times, blank as left out",
    vessel: "0 is refused",
    readability: "left out",
    interval: "left out",
  },
  "DRYING.END": {
    times: "column of times",
    weights: "column of weighings",
    vessel: "0 is refused",
    readability: "left out",
    limit: "left out",
    criterion: "left out",
    timing: "left out",
    repeatability: "left out",
  },
  "DRYING.FIT": { times: "column of times", weights: "column of weighings", model: "missing", vessel: "0 is refused", dry: "left out" },
  VOLATILEFRACTION: { vessel: "missing", before: "missing", after: "missing" },
  CHARYIELD: { vessel: "missing", dry: "missing", char: "missing", ash: "left out" },
  VOLATILEMATTER: { vessel: "missing", before: "missing", after: "missing", moisture: "0 is 0", basis: "left out" },
  ASHFRACTION: { vessel: "missing", before: "missing", ash: "missing", moisture: "left out" },
  FIXEDCARBON: { moisture: "0 is 0", volatile: "missing", ash: "missing" },
  LOSSONIGNITION: { vessel: "missing", before: "missing", after: "missing" },
  PROXIMATE: { vessel: "missing", moist: "missing", dry: "missing", char: "missing", ash: "missing" },
  "BASIS.CONVERT": {
    value: "0 is 0",
    from: "missing",
    to: "missing",
    moistureReceived: "left out",
    moistureAnalysis: "left out",
    ash: "left out",
    quantity: "left out",
  },
  THEORETICALLOSS: { start: "missing", residue: "missing", leaves: "left out", what: "left out" },
  HYDRATEWATER: { vessel: "missing", before: "missing", after: "missing", anhydrous: "missing", u: "left out" },
  "PURITY.FROMLOSS": { loss: "missing", start: "missing", residue: "missing", moisture: "left out", u: "left out", what: "left out" },
  "CALCINATION.DEGREE": { productLoss: "0 is 0", rawLoss: "missing" },
  "MIXTURE.FROMLOSS": {
    loss: "missing",
    start1: "missing",
    residue1: "missing",
    start2: "missing",
    residue2: "missing",
    u: "left out",
    what: "left out",
  },
  "DECOMPOSITION.STEPS": { formula: "missing" },
  "PRODUCT.LEDGER": {
    feed: "missing",
    moisture: "0 is 0",
    char: "missing",
    liquids: "missing",
    gas: "left out",
    u: "left out",
    liquidsWater: "left out",
  },
  "VAPOUR.COMPOSITION": {
    feedCarbon: "missing",
    feedHydrogen: "0 is 0, alone it is an empty row",
    feedOxygen: "0 is 0, alone it is an empty row",
    charCarbon: "missing",
    charHydrogen: "0 is 0, alone it is an empty row",
    charOxygen: "0 is 0, alone it is an empty row",
    yield: "missing",
  },
  "ACID.FROMTITRATION": {
    volume: "missing",
    concentration: "missing",
    sample: "missing",
    unit: "missing",
    density: "left out",
    blank: "left out",
    dilution: "left out",
  },
  ZERODRIFT: {
    reading: "missing",
    zeroBefore: "0 is 0",
    zeroAfter: "0 is 0",
    timeBefore: "0 is 0, else left out",
    time: "left out",
    timeAfter: "left out",
  },
  BLANKCORRECTED: { loss: "missing", blankLoss: "0 is 0", u: "left out" },
  AIRDENSITY: { temperature: "0 is 0", pressure: "missing", humidity: "0 is 0", formula: "left out" },
  BUOYANCY: { reading: "missing", density: "missing", airDensity: "left out", referenceDensity: "left out" },
  HOTWEIGHING: { temperatureDifference: "0 is 0", rate: "left out" },
  "READING.U": { readability: "missing", repeatability: "left out", linearity: "left out", tared: "left out" },
  "LOSSFRACTION.U": { vessel: "missing", before: "missing", after: "missing", u: "missing" },
  "SAMPLE.MINIMUM": { u: "missing", wantedU: "missing", expectedLoss: "left out", k: "left out" },
  "CHANGE.SIGNIFICANT": { before: "missing", after: "missing", u: "missing", k: "left out", readability: "left out" },
  REPLICATES: { values: "column of results", repeatabilitySd: "left out", zeros: "left out", readability: "left out" },
  GRUBBS: { values: "column of results", alpha: "left out", sides: "left out", zeros: "left out", readability: "left out" },
  DIXON: { values: "column of results", alpha: "left out", sides: "left out", zeros: "left out", readability: "left out" },
  TYPICALRANGE: { quantity: "in words", value: "in words", feedstock: "left out" },
  GASVOLUME: { mass: "missing", molarMass: "missing", temperature: "0 is 0", pressure: "left out" },
  AIRLEFT: { volumes: "0 is 0" },
  VENTDIAMETER: { volume: "missing", minutes: "missing", density: "missing", peakFactor: "missing", overpressure: "left out" },
  "SCHEDULE.TIME": { temperatures: "column of weighings", rates: "column of rates", holds: "column of holds", rateUnit: "missing" },
  HEATINGRATE: { times: "column of times", temperatures: "column of weighings", set: "left out", from: "left out", to: "left out" },
  SEVERITY: { temperature: "missing", minutes: "left out", from: "0 is 0, else left out", rate: "left out" },
  ATOMICRATIO: { carbon: "missing", hydrogen: "missing", oxygen: "missing", carbonateCO2: "left out", moisture: "left out" },
  "TEMPERATURE.CORRECTED": { reading: "0 is 0", readings: "column of points", references: "column of points" },
  "BOILINGPOINT.WATER": { pressure: "missing" },
  "ROOM.PPM": { gramsPerHour: "missing", molarMass: "missing", volume: "missing", airChanges: "0 is 0", minutes: "left out" },
  "HEATINGVALUE.HIGHER": {
    carbon: "missing",
    hydrogen: "missing",
    oxygen: "0 is 0",
    nitrogen: "left out",
    sulfur: "left out",
    ash: "left out",
    correlation: "left out",
  },
  "HEATINGVALUE.PROXIMATE": { fixedCarbon: "missing", volatile: "missing", ash: "missing" },
  "HEATINGVALUE.NET": { higherDry: "missing", hydrogen: "missing", oxygen: "0 is 0", nitrogen: "left out", moisture: "left out" },
  DRYINGHEAT: {
    dry: "missing",
    water: "missing",
    from: "0 is 0",
    to: "missing",
    solidHeat: "left out",
    vesselMass: "left out",
    vesselHeat: "left out",
  },
  REPORTED: { value: "0 is 0", u: "missing", k: "left out" },
  "COMPARE.GROUPS": { values: "column of results", groups: "column of names", zeros: "left out" },
  SHRINKAGE: { before: "missing", after: "missing", of: "left out" },
  ABSORPTION: { dry: "missing", saturated: "missing", tray: "left out" },
  "SLIP.SOLIDS": { vessel: "missing", full: "missing", volume: "missing", density: "left out" },
};
