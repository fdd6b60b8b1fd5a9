import { runCommand } from "./runCommand";
import { today } from "../workbook/dayOf";
import { answerLost } from "./words/refusals";

// A reader that goes away, such as "head", ends the program without a word; an answer that is lost otherwise is said to be.
process.stdout.on("error", ({ code }: NodeJS.ErrnoException) => {
  if (code === "EPIPE") process.exit();
  process.stderr.write(`retort: ${answerLost(code ?? "")}\n`, () => process.exit(1));
});
process.stderr.on("error", () => undefined);

void runCommand(process.argv.slice(2), {
  answer: (text) => void process.stdout.write(text),
  note: (line) => void process.stderr.write(`${line}\n`),
  today,
}).then((code) => {
  process.exitCode = code;
});
