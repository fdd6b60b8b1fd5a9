import { Command, Option } from "commander";
import { macrosNameSheets } from "../../problems/files/packageProblems";
import { counted } from "../../problems/quoted";
import { signatureGone } from "../../problems/files/signatureWords";
import type { ValuesMade } from "../../xlsx/handedOn/valuesFile";
import type { Book } from "../book/Book";
import { openBook } from "../book/openBook";
import { refuseUnfinished } from "../book/refuseUnfinished";
import { besideFile } from "../files/bookFile";
import { checkTarget, writeWhole } from "../files/writeWhole";
import { Refusal, WrongUsage } from "../Refusal";
import { severalNames } from "../severalNames";
import { printable, type Terminal } from "../Terminal";
import { BOOK, exampleLines, JSON_ANSWER, KEEP_ERRORS, OUTPUT, OVERWRITE, RECALCULATE, shareHelp } from "../words/helpWords";
import { hiddenLeftOut, wantsEnding, written } from "../words/refusals";
import { fixedCells, NEWER_WITH_PLAIN, PLAIN_FILE, rulesLines, sizedCells, SHEET_WITH_VALUES, VALUES_FILE } from "../words/shareWords";
import { asPlainCells } from "./asPlainCells";
import { asValues } from "./asValues";
import { rulesOutcome, type RulesOutcome } from "./rulesOutcome";
import { hasCalls, refuseUnknownSheets, sharedSheets, withCalls } from "./sharedSheets";

interface ShareOptions {
  readonly as: "values" | "plain-cells";
  readonly output?: string;
  readonly sheet: readonly string[];
  readonly overwrite: boolean;
  readonly recalculate: boolean;
  readonly keepErrors: boolean;
  readonly newerFunctions: boolean;
  readonly json: boolean;
}

export const shareCommand = (terminal: Terminal): Command =>
  new Command("share")
    .description(shareHelp.about)
    .argument("<book>", BOOK)
    .addOption(new Option("--as <form>", shareHelp.as).choices(["values", "plain-cells"]).makeOptionMandatory())
    .option("-o, --output <file>", `${OUTPUT} (default: beside the workbook)`)
    .option("--sheet <name>", shareHelp.sheet, severalNames, [])
    .option("--newer-functions", shareHelp.newer, false)
    .option("--recalculate", RECALCULATE, false)
    .option("--keep-errors", KEEP_ERRORS, false)
    .option("--overwrite", OVERWRITE, false)
    .option("--json", JSON_ANSWER, false)
    .addHelpText("after", exampleLines(shareHelp.examples))
    .action((book: string, options: ShareOptions) => share(terminal, book, options));

async function share(terminal: Terminal, path: string, options: ShareOptions): Promise<void> {
  const { overwrite, recalculate, keepErrors, newerFunctions } = options;
  const isPlain = options.as === "plain-cells";
  if (isPlain && options.sheet.length > 0) throw new WrongUsage(SHEET_WITH_VALUES);
  if (!isPlain && newerFunctions) throw new WrongUsage(NEWER_WITH_PLAIN);
  const output = options.output ?? besideFile(path, isPlain ? PLAIN_FILE : VALUES_FILE, endingBeside(path));
  const target = { file: output, inputs: [path], overwrite };
  await refuseUnknownSheets(path, options.sheet);
  await checkTarget(target);
  const wanted = isPlain ? {} : { wanted: (of: Pick<Book, "sheets">) => sharedSheets(of, options.sheet) };
  const book = await openBook(terminal, path, { recalculate, ...wanted });
  const hasMacros = await book.file.hasMacros();
  if (hasMacros && !isPlain) throw new Refusal(macrosNameSheets);
  const ending = hasMacros ? ".xlsm" : ".xlsx";
  // Which of the two it has to be is for the workbook to say.
  const isOther = options.output !== undefined && !/\.xls[xm]$/i.test(options.output);
  if (!output.toLowerCase().endsWith(ending)) throw new (isOther ? WrongUsage : Refusal)(wantsEnding(output, ending));
  const shared = isPlain ? withCalls(book) : sharedSheets(book, options.sheet);
  await refuseUnfinished(book, isPlain ? book.sheets : shared, { keepErrors });
  const day = terminal.today();
  const made = isPlain
    ? { as: options.as, file: output, ...(await asPlainCells(book, { day, newerFunctions, recalculated: recalculate })) }
    : { as: options.as, file: output, ...(await valuesMade(book, shared, { day, recalculated: recalculate })) };
  const wasSigned = await book.file.isSigned();
  await writeWhole(target, await book.file.bytes());
  terminal.note(written(output));
  if (wasSigned) terminal.note(signatureGone);
  const hidden = isPlain || options.sheet.length > 0 ? [] : book.sheets.filter((sheet) => sheet.isHidden && hasCalls(sheet));
  if (hidden.length > 0) terminal.note(hiddenLeftOut(hidden.map(({ name }) => name)));
  if (options.json) return terminal.answer(`${JSON.stringify({ ...made, date: day }, undefined, 2)}\n`);
  const lines =
    "sheets" in made
      ? made.sheets.map(
          ({ sheet, copy, record, formulas }) => `"${sheet}": ${counted(formulas, "value")} on "${copy}", how they came about on "${record}"`,
        )
      : [`${counted(made.rewritten, "cell formula")} in built-in functions`, ...fixedCells(made.fixed), ...sizedCells(made.keepingSize)];
  terminal.answer(`${printable([...lines, ...rulesLines(made.rules)].join("\n"))}\n`);
}

/** What is made of a template is a workbook, and a file without an ending gets one. */
const endingBeside = (path: string): string | undefined =>
  /\.xls[xm]$/i.test(path) ? undefined : /\.xltm$/i.test(path) ? ".xlsm" : /\.\w+$/.test(path) && !/\.xltx$/i.test(path) ? undefined : ".xlsx";

async function valuesMade(...asked: Parameters<typeof asValues>): Promise<{ readonly sheets: readonly ValuesMade[]; readonly rules: RulesOutcome }> {
  const { made, put } = await asValues(...asked);
  return { sheets: made, rules: rulesOutcome(put) };
}
