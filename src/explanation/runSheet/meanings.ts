import { cellNameWords } from "../../runsheet/words/cellNameWords";
import { meaningWords, type Meaning } from "../../runsheet/words/meaningWords";
import { openFireWords } from "../../runsheet/words/openFireWords";
import { resultWords } from "../../runsheet/words/resultWords";
import { saltWords } from "../../runsheet/words/saltWords";
import { caughtWords } from "../../runsheet/words/caughtWords";
import { stageWords } from "../../runsheet/words/stageWords";
import { sheetWords } from "../../runsheet/words/sheetWords";
import { stripWords } from "../../runsheet/words/stripWords";
import { weighingWords } from "../../runsheet/words/weighingWords";
import { balanceMeanings, saysOfCorner } from "../../runsheet/words/balance/balanceMeanings";
import { balanceWords } from "../../runsheet/words/balance/balanceWords";
import { coreOf, withoutUnit } from "./cellNames";

const { workings } = sheetWords;
const strip = stripWords.columns("C");
const [u = "", explained = ""] = workings.u.split("; ");
const [inUse = "", absent = ""] = workings.inUse.split("; ");
const [together = "", agreement = ""] = workings.together.split("; ");
const [start = "", ...crosswise] = workings.start.split("; ");
const [nextRow = ""] = workings.next.split("; ");
const { shares } = resultWords;
const [theoryLoss = "", molarMass = ""] = saltWords.workings.theory.split("; ");
const [equation = "", residueMass = ""] = saltWords.workings.equation.split("; ");
const [watersByTheory = "", onlyWater = ""] = saltWords.workings.waters.split("; ");

/** What a cell means, by what it is called on the sheet; whatever other kinds of run call the same means the same. */
const MEANINGS: ReadonlyMap<string, Meaning> = new Map(
  (
    [
      [weighingWords.lost(1), meaningWords.lost],
      [weighingWords.gained(1), meaningWords.gain],
      [weighingWords.dry, meaningWords.dry],
      [weighingWords.char, meaningWords.char],
      [weighingWords.ash, meaningWords.ash],
      [shares.moistureWet, meaningWords.moistureWet],
      [shares.moistureDry, meaningWords.moistureDry],
      [shares.volatile, meaningWords.volatile],
      [shares.charYield, meaningWords.charYield],
      [shares.charYieldAshFree, meaningWords.charYieldAshFree],
      [shares.ash, meaningWords.ashShare],
      [saltWords.before, meaningWords.beforeHeating],
      [saltWords.left, meaningWords.leftAfterHeating],
      [shares.lossOnHeating, meaningWords.lossOnHeating],
      [shares.leftOnHeating, meaningWords.leftAfterHeating],
      [shares.ofTheory, meaningWords.ofTheory],
      [shares.waters, meaningWords.waters],
      [theoryLoss, meaningWords.theoryLoss],
      ...[molarMass, residueMass].map((name) => [name, meaningWords.molarMass] as const),
      [equation, meaningWords.equation],
      [watersByTheory, meaningWords.watersByTheory],
      [onlyWater, meaningWords.onlyWater],
      [resultWords.plusMinus(1), meaningWords.plusMinus],
      [resultWords.together, meaningWords.together],
      [resultWords.trust, meaningWords.trust],
      [sheetWords.says, meaningWords.says],
      [strip.correction, meaningWords.takenOff],
      [strip.cold, meaningWords.coldEnough],
      [cellNameWords.head.title, meaningWords.next],
      [cellNameWords.head.answer, meaningWords.answer],
      [cellNameWords.head.checks, meaningWords.checks],
      [cellNameWords.head.covers, meaningWords.covers],
      [cellNameWords.lastLine.openFire, meaningWords.openly],
      [cellNameWords.lastLine.caught, meaningWords.productsTold],
      [cellNameWords.lastLine.stages, meaningWords.stagesTold],
      [cellNameWords.lastLine.compound, meaningWords.theoryTold],
      [cellNameWords.lastLine.drying, meaningWords.waterTold],
      [cellNameWords.verdict, meaningWords.verdict],
      [cellNameWords.finding, meaningWords.finding],
      [caughtWords.workings.fed, meaningWords.fed],
      [caughtWords.workings.found, meaningWords.found],
      [caughtWords.workings.pairs, meaningWords.pairs],
      [caughtWords.total, meaningWords.liquids],
      [shares.liquidYield, meaningWords.liquidYield],
      [shares.waterFormed, meaningWords.waterFormed],
      [shares.gasMeasured, meaningWords.gasMeasured],
      [shares.gasDifference, meaningWords.gasDifference],
      [shares.unaccounted, meaningWords.unaccounted],
      [shares.closure, meaningWords.closure],
      [stageWords.workings.done, meaningWords.stagesDone],
      [stageWords.workings.left, meaningWords.stageLeft],
      [stageWords.left(1), meaningWords.stageLeft],
      [shares.lostInAll, meaningWords.lostInAll],
      [shares.leftAtEnd, meaningWords.leftAtEnd],
      [cellNameWords.note, meaningWords.note],
      [cellNameWords.beside, meaningWords.beside],
      ...workings.typedOver.split("; ").map((name) => [name, meaningWords.typedOver] as const),
      ...workings.wrongBoxes.split("; ").map((name) => [name, meaningWords.wrongBox] as const),
      ...Object.values(openFireWords.compared).map((name) => [name, meaningWords.compared] as const),
      [u, meaningWords.u],
      [explained, meaningWords.explained],
      [nextRow, meaningWords.nextRow],
      [inUse, meaningWords.inUse],
      [absent, meaningWords.absent],
      [start, meaningWords.start],
      ...crosswise.map((name) => [name, meaningWords.crosswise] as const),
      [workings.steadyRound, meaningWords.steady],
      [workings.steadyFiring, meaningWords.steady],
      [workings.proving, meaningWords.proving],
      [workings.yetToDry, meaningWords.yetToDry],
      [workings.contradiction, meaningWords.contradiction],
      [workings.vessel, meaningWords.vessel],
      [workings.corrected, meaningWords.counted],
      [together, meaningWords.togetherWorking],
      [agreement, meaningWords.agreement],
      [workings.firedVessel, meaningWords.firedVessel],
      [workings.before, meaningWords.before],
      [sheetWords.elapsed, meaningWords.elapsed],
      ...[...workings.band, workings.bandEdges].map((name) => [name, meaningWords.band] as const),
      ...workings.firingBand.map((name) => [name, meaningWords.firingBand] as const),
      [workings.frame, meaningWords.frame],
      ...[workings.drawn, workings.drawnMinutes].map((name) => [name, meaningWords.drawn] as const),
      ...[workings.latest, workings.latestAt].map((name) => [name, meaningWords.latest] as const),
      ...[workings.foretold, workings.foretoldAt].map((name) => [name, meaningWords.foretold] as const),
    ] as const
  ).map(([name, meaning]) => [coreOf(name), meaning]),
);

// "3: to 350 °C" in the results of staged heating.
const STAGE = /^\d+: /;

const SAYS = withoutUnit(sheetWords.says);
const GAIN = coreOf(weighingWords.gained(1));
const headingOf = (heading: (number: number) => string): string => withoutNumber(heading(1));
const withoutNumber = (heading: string): string => heading.replace(/^\d+ /, "");

/** What a column means in a block where it means something of its own, by the heading of the block without its number. */
const IN_BLOCK: ReadonlyMap<string, ReadonlyMap<string, Meaning>> = new Map([
  [headingOf(caughtWords.after), new Map<string, Meaning>([[GAIN, meaningWords.gainOfPart], [SAYS, meaningWords.saysOfPart]])], // prettier-ignore
  [headingOf(weighingWords.end.heading), new Map<string, Meaning>([[SAYS, meaningWords.saysOfVessel]])],
]);

/** @param block the heading over it */
export const meaningOf = (core: string, block: string): Meaning =>
  IN_BLOCK.get(withoutNumber(block))?.get(core) ?? MEANINGS.get(core) ?? (STAGE.test(core) ? meaningWords.stageLost : meaningWords.other);

const BALANCE: ReadonlyMap<string, Meaning> = new Map(balanceMeanings.map(([name, meaning]) => [withoutUnit(name), meaning]));

/** The same on a balance check, whose headings are its own. */
export const balanceMeaningOf = (core: string, block: string): Meaning =>
  core === SAYS && block === balanceWords.corners.heading ? saysOfCorner : (BALANCE.get(core) ?? MEANINGS.get(core) ?? meaningWords.other);
