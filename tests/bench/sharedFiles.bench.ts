import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { runCommand } from "../../src/command/runCommand";
import { longBook } from "../command/longBook";

// How long the command line takes to share workbooks of many Retort cells, and that ten times the cells take ten times as long.
const SIZES = [1_000, 10_000, 100_000];
const MICROSECONDS = 1000;

async function bench(): Promise<void> {
  const folder = mkdtempSync(path.join(os.tmpdir(), "retort-bench-"));
  const silent = { answer: () => undefined, note: () => undefined, today: () => "2027-01-15" };
  for (const as of ["values", "plain-cells"]) {
    for (const cells of SIZES) {
      const book = path.join(folder, `${cells}.xlsx`);
      writeFileSync(book, await longBook(cells));
      const [start, before] = [performance.now(), process.cpuUsage()];
      const code = await runCommand(["share", book, "--as", as, "-o", path.join(folder, "out.xlsx"), "--overwrite"], silent);
      if (code !== 0) throw new Error(`${as} of ${cells} cells was refused`);
      const { user } = process.cpuUsage(before);
      const took = performance.now() - start;
      console.log(
        `${as}, ${cells} Retort cells: ${Math.round(took)} ms, ${Math.round(user / MICROSECONDS)} ms of processor, ${(user / cells).toFixed(1)} µs each`,
      );
    }
  }
  rmSync(folder, { recursive: true });
}

void bench();
