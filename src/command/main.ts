import { runCommand } from "./runCommand";
import { today } from "../workbook/dayOf";

// A reader that goes away, such as "head", ends the program without a word.
process.stdout.on("error", () => process.exit());

void runCommand(process.argv.slice(2), {
  answer: (text) => void process.stdout.write(text),
  note: (line) => void process.stderr.write(`${line}\n`),
  today,
}).then((code) => {
  process.exitCode = code;
});
