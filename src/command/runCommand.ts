import { Command, CommanderError } from "commander";
import { ArgumentProblem } from "../problems/ArgumentProblem";
import { damageInWords } from "../xlsx/parts/damageInWords";
import { VERSION } from "../sharing/record/calculationRecord";
import { WorkbookProblem } from "../workbook/Workbook";
import { explainCommand } from "./explain/explainCommand";
import { recordCommand } from "./record/recordCommand";
import { Refusal, WrongUsage } from "./Refusal";
import { shareCommand } from "./share/shareCommand";
import { reportCommand } from "./report/reportCommand";
import { severalNames } from "./severalNames";
import { sheetCommand } from "./sheet/sheetCommand";
import { DamagedFile } from "../xlsx/parts/FileParts";
import { printable, type Terminal } from "./Terminal";
import { ABOUT, ABOUT_EXITS } from "./words/helpWords";
import { givenTwice, internalError } from "./words/refusals";

const DONE = 0;
const REFUSED = 1;
const WRONG_USAGE = 2;

/** Carries one command out. @param words what was typed after the program's name @returns 0, 1 where it was refused, 2 for wrong usage */
export async function runCommand(words: readonly string[], terminal: Terminal): Promise<number> {
  try {
    await program(terminal).parseAsync([...words], { from: "user" });
    return DONE;
  } catch (problem) {
    // The parser has said itself what is wrong.
    if (problem instanceof CommanderError) return problem.exitCode === 0 ? DONE : WRONG_USAGE;
    terminal.note(printable(`retort: ${sentenceOf(problem)}`));
    return problem instanceof WrongUsage ? WRONG_USAGE : REFUSED;
  }
}

function sentenceOf(problem: unknown): string {
  if (problem instanceof DamagedFile) return damageInWords(problem);
  const isOurs = [Refusal, WrongUsage, WorkbookProblem, ArgumentProblem].some((kind) => problem instanceof kind);
  return isOurs ? (problem as Error).message : internalError(problem instanceof Error ? (problem.stack ?? problem.message) : String(problem));
}

function program(terminal: Terminal): Command {
  const whole = new Command("retort").description(ABOUT).version(VERSION).addHelpText("after", ABOUT_EXITS);
  for (const command of [shareCommand(terminal), explainCommand(terminal), recordCommand(terminal), reportCommand(terminal), sheetCommand(terminal)])
    whole.addCommand(command);
  for (const command of [whole, ...whole.commands]) {
    refuseTwice(command);
    command
      .exitOverride()
      .showHelpAfterError("Give --help to see how it is used.")
      .allowExcessArguments(false)
      .configureOutput({ writeOut: terminal.answer, writeErr: (text) => terminal.note(printable(text.trimEnd())) });
  }
  return whole;
}

/** The parser would take the last of them without a word. */
function refuseTwice(command: Command): void {
  for (const option of command.options) {
    if (option.isBoolean() || option.parseArg === severalNames) continue;
    let isGiven = false;
    command.on(`option:${option.name()}`, () => {
      if (isGiven) throw new WrongUsage(givenTwice(`--${option.name()}`));
      isGiven = true;
    });
  }
}
