import { cellNameWords } from "../../runsheet/words/cellNameWords";
import { meaningWords, type Meaning } from "../../runsheet/words/meaningWords";
import { openFireWords } from "../../runsheet/words/openFireWords";
import { resultWords } from "../../runsheet/words/resultWords";
import { sheetWords } from "../../runsheet/words/sheetWords";
import { stripWords } from "../../runsheet/words/stripWords";
import { weighingWords } from "../../runsheet/words/weighingWords";
import { coreOf } from "./cellNames";

const { workings } = sheetWords;
const strip = stripWords.columns("C");
const [u = "", explained = ""] = workings.u.split("; ");
const [nextRow = ""] = workings.next.split("; ");
const { shares } = resultWords;

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
      [cellNameWords.head.openly, meaningWords.openly],
      [cellNameWords.verdict, meaningWords.verdict],
      [cellNameWords.finding, meaningWords.finding],
      ...Object.values(openFireWords.compared).map((name) => [name, meaningWords.compared] as const),
      [u, meaningWords.u],
      [explained, meaningWords.explained],
      [nextRow, meaningWords.nextRow],
      [workings.inUse, meaningWords.inUse],
      [workings.start, meaningWords.start],
      [workings.steadyRound, meaningWords.steady],
      [workings.steadyFiring, meaningWords.steady],
      [workings.weighingsLeft, meaningWords.weighingsLeft],
      [workings.contradiction, meaningWords.contradiction],
      [workings.vessel, meaningWords.vessel],
      [workings.corrected, meaningWords.counted],
      [workings.together, meaningWords.togetherWorking],
      [workings.firedVessel, meaningWords.firedVessel],
      [workings.before, meaningWords.before],
      [sheetWords.elapsed, meaningWords.elapsed],
      ...[...workings.band, workings.bandEdges].map((name) => [name, meaningWords.band] as const),
      ...[workings.latest, workings.latestAt].map((name) => [name, meaningWords.latest] as const),
      ...[workings.foretold, workings.foretoldAt].map((name) => [name, meaningWords.foretold] as const),
    ] as const
  ).map(([name, meaning]) => [coreOf(name), meaning]),
);

export const meaningOf = (core: string): Meaning => MEANINGS.get(core) ?? meaningWords.other;
