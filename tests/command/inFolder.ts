import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { runCommand } from "../../src/command/runCommand";

export interface Ran {
  readonly code: number;
  readonly answer: string;
  readonly notes: string;
}

/** A folder of its own for the files of a test. */
export class CommandFolder {
  readonly folder = mkdtempSync(path.join(os.tmpdir(), "retort-command-"));

  at(name: string): string {
    return path.join(this.folder, name);
  }

  put(name: string, content: Uint8Array | string): string {
    writeFileSync(this.at(name), content);
    return this.at(name);
  }

  read(name: string): Uint8Array<ArrayBuffer> {
    return new Uint8Array(readFileSync(this.at(name)));
  }

  remove(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }
}

export const DAY = "2027-01-15";

/** Carries out a command as if typed. */
export async function ran(...words: readonly string[]): Promise<Ran> {
  let [answer, notes] = ["", ""];
  const code = await runCommand(words, {
    answer: (text) => void (answer += text),
    note: (line) => void (notes += `${line}\n`),
    today: () => DAY,
  });
  return { code, answer, notes };
}
