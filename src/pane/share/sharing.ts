import type { WhyFixed } from "../../problems/sharing/plainCellProblems";
import { copyMade, inThisWorkbook, plainCopyMade } from "../../problems/sharing/shareTabWords";
import { notGiven } from "../../explanation/saved/notGiven";
import { staleElsewhere } from "../../explanation/saved/staleElsewhere";
import { otherFormulas } from "../../problems/runsheet/growingProblems";
import { quoted } from "../../problems/quoted";
import {
  besideUnread,
  namesStay,
  plainFileMade,
  rulesStillCall,
  takenOutAlone,
  takenOutConnected,
  takenOutStale,
  takenOutToo,
  valuesFileMade,
  whatTaken,
} from "../../problems/sharing/sharedCopyWords";
import { signatureGone } from "../../problems/files/signatureWords";
import { copyTouched, notFollowedElsewhere, notWhatFormulasGive } from "../../problems/sharing/sharingProblems";
import { formulasNotOwn } from "../../runsheet/reading/formulasNotOwn";
import { circles } from "../../sharing/circles";
import type { Patience } from "../../sharing/finalValues";
import { readBeside } from "../../sharing/besideCopy";
import { rulesCalling } from "../../sharing/callingBeside";
import { goOnLater, type Progress } from "../../sharing/progress";
import { takenOut } from "../../sharing/plain/plainRules";
import { shareAsPlainCells } from "../../sharing/shareAsPlainCells";
import { shareAsValues, type CopyShared, type WithErrors } from "../../sharing/shareAsValues";
import { shareInFile, type FileKind, type OwnFiles } from "../../sharing/shareInFile";
import { NoOwnFile } from "../../workbook/NoOwnFile";
import type { RangeReading, Workbook } from "../../workbook/Workbook";
import { today } from "../../workbook/dayOf";

export interface Wanted extends Patience, WithErrors {
  readonly as: FileKind;
  /** The sheet chosen. */
  readonly sheet: string;
  /** True for every sheet of the workbook in one file. */
  readonly all: boolean;
  /** What makes files; undefined for a copy in the workbook itself. */
  readonly files: OwnFiles | undefined;
  readonly told: (step: string) => void;
  readonly isStopped: () => boolean;
}

export interface Told {
  readonly said: string;
  /** Sheets made in the workbook. */
  readonly made?: { readonly copy: string; readonly record: string };
}

/**
 * Shares in a file of its own or in the workbook itself, and says what was made. Where the workbook gives no file, one sheet goes into the workbook
 * instead, and the reason is said; several are not, since they would crowd it.
 */
export async function share(workbook: Workbook, wanted: Wanted): Promise<Told> {
  const { files, all, sheet } = wanted;
  if (files === undefined) return inWorkbook(workbook, wanted);
  try {
    const sheets = all ? await workbook.sheetNames() : [sheet];
    const others: string[] = [];
    const asked = { ...wanted, ...lookingAt(workbook, wanted, others), sheets, date: today() };
    const { fileName, cells, fixed, takenOut, wasSigned, whereItIs } = await shareInFile(workbook, files, asked);
    const made = wanted.as === "values" ? valuesFileMade(fileName, cells) : plainFileMade(fileName, cells, fixed);
    const isApart = (why: WhyFixed): boolean => why === "notShared" || why === "connection" || why === "ruleStale";
    const named = (isSo: (why: WhyFixed) => boolean): string[] =>
      takenOut.filter(({ why }) => isSo(why)).map(({ where, what }) => whatTaken(where, what));
    const gone = [
      takenOutToo(named((why) => !isApart(why))),
      takenOutAlone(named((why) => why === "notShared")),
      takenOutConnected(named((why) => why === "connection")),
      takenOutStale(named((why) => why === "ruleStale")),
    ];
    const further = [...gone, wasSigned === true ? signatureGone : "", whereItIs, ...others];
    return { said: [made, ...further].filter((sentence) => sentence !== "").join(" ") };
  } catch (problem) {
    if (!(problem instanceof NoOwnFile) || all) throw problem;
    const { said, ...others } = await inWorkbook(workbook, wanted);
    return { ...others, said: inThisWorkbook(problem.message, said) };
  }
}

/** A host keeps the values that a file came with until something changes. */
const lookingAt = (workbook: Workbook, { asShown, ...progress }: Wanted, others: string[]): WithErrors => ({
  looked: async (sheets) => {
    const unfollowed = asShown === true ? "" : await refuseStale(workbook, sheets, progress);
    await goOnLater(progress);
    others.splice(0, others.length, ...sheets.flatMap(saidOfFormulas), ...(unfollowed === "" ? [] : [unfollowed]));
  },
});

/** What a colleague is to know, for a run whose formulas somebody changed may be shared all the same. */
function saidOfFormulas(reading: RangeReading): string[] {
  const said = otherFormulas(formulasNotOwn(reading));
  return said === "" ? [] : [`${quoted(reading.sheet)}: ${said}`];
}

/** @returns what is to be said where not all could be followed @throws StaysPending */
async function refuseStale(workbook: Workbook, sheets: readonly RangeReading[], progress: Progress): Promise<string> {
  refuseNotGiven(sheets);
  await goOnLater(progress);
  const [{ sheet }] = sheets as [RangeReading];
  const { names } = await readBeside(workbook, sheet);
  await goOnLater(progress);
  // What cannot be read elsewhere is no reason to keep anybody from sharing what can.
  const elsewhere = await staleElsewhere(workbook, sheets, names).catch(() => undefined);
  const [first] = elsewhere?.cells ?? [];
  if (first !== undefined) throw notWhatFormulasGive(first.sheet, (elsewhere?.cells ?? []).filter((one) => one.sheet === first.sheet)); // prettier-ignore
  return elsewhere?.isAll === true ? "" : notFollowedElsewhere;
}

function refuseNotGiven(sheets: readonly RangeReading[]): void {
  const found = notGiven({ sheets });
  // What goes round in a circle gives something else each time, and was shared so by choice.
  const around = new Set((found.length === 0 ? [] : circles(sheets)).map(({ sheet, cell }) => `${sheet}!${cell}`));
  const [first, ...others] = found.filter(({ sheet, cell }) => !around.has(`${sheet}!${cell}`));
  if (first === undefined) return;
  const cells = [first, ...others].filter(({ sheet }) => sheet === first.sheet);
  throw notWhatFormulasGive(first.sheet, cells);
}

async function inWorkbook(workbook: Workbook, wanted: Wanted): Promise<Told> {
  const { sheet, as } = wanted;
  const others: string[] = [];
  const shared = await (as === "values" ? shareAsValues : shareAsPlainCells)(workbook, sheet, today(), {
    ...wanted,
    ...lookingAt(workbook, wanted, others),
  });
  const { copy, record, touched } = shared;
  const made = "fixed" in shared ? plainCopyMade(copy, record, shared.cells, shared.fixed) : copyMade(copy, record, shared.frozenCells);
  const said = [made, touched ? copyTouched(copy, sheet) : "", ...(await saidOfBeside(workbook, shared)), ...others];
  return { said: said.filter((sentence) => sentence !== "").join(" "), made: { copy, record } };
}

/** The copy stands by now, so that whatever keeps its rules from being read is no reason to say otherwise. */
async function saidOfBeside(workbook: Workbook, { copy, put, unread }: CopyShared): Promise<string[]> {
  const taken = takenOut(put).map(({ where, what }) => whatTaken(where, what));
  const names = (put.namesKept ?? []).map(({ name }) => name);
  // Excel may tell rules of a copy otherwise than those of the sheet.
  const after = put.rules.length === 0 ? undefined : await readBeside(workbook, copy);
  const still = after === undefined ? [] : rulesCalling(after, copy).filter(({ kind }) => put.rules.some((rule) => rule.kind === kind));
  const unsure = new Set([...unread, ...(after?.unread ?? []).filter((what) => what !== "names")]);
  return [takenOutToo(taken), rulesStillCall(copy, still.length), namesStay(copy, names), besideUnread(copy, [...unsure])];
}
