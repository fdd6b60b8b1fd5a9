import { randomBytes } from "node:crypto";
import type { BigIntStats } from "node:fs";
import { link, lstat, readlink, realpath, rename, stat, unlink, writeFile } from "node:fs/promises";
import path from "node:path";
import { folderMissing, notWritten, outputExists, outputIsFolder, outputIsInput } from "../words/refusals";
import { Refusal } from "../Refusal";
import { codeOf } from "./bookFile";

export interface Target {
  readonly file: string;
  /** Files that are read and so never written over, whatever other names they have. */
  readonly inputs: readonly string[];
  readonly overwrite: boolean;
}

/**
 * Looks, before any work is done, whether a file may be written: not over what is read, be it through a link or under another spelling, and over
 * another file only when asked.
 * @throws Refusal
 */
export async function checkTarget({ file, inputs, overwrite }: Target): Promise<void> {
  const there = await found(stat, file);
  if (there === undefined) {
    // A link that leads nowhere is a file that somebody made.
    if ((await found(lstat, file)) !== undefined && !overwrite) throw new Refusal(outputExists(file));
    const folder = path.dirname(await placeOf(file));
    if ((await found(stat, folder))?.isDirectory() !== true) throw new Refusal(folderMissing(folder));
    return;
  }
  if (there.isDirectory()) throw new Refusal(outputIsFolder(file));
  for (const input of inputs) if (await isSameFile(input, file)) throw new Refusal(outputIsInput(file));
  if (!overwrite) throw new Refusal(outputExists(file));
}

/**
 * Writes a file whole or not at all: under a name of its own in the same folder, then under the name wanted in one step.
 * @throws Refusal
 */
export async function writeWhole(target: Target, content: Uint8Array | string): Promise<void> {
  await checkTarget(target);
  const { file, overwrite } = target;
  const place = await placeOf(file);
  const unfinished = path.join(path.dirname(place), `.${randomBytes(6).toString("hex")}.unfinished`);
  try {
    await writeFile(unfinished, content, { flag: "wx" });
    if (overwrite) await rename(unfinished, place);
    else await putNew(unfinished, place);
  } catch (problem) {
    await unlink(unfinished).catch(() => undefined);
    if (problem instanceof Refusal) throw problem;
    throw new Refusal(codeOf(problem) === "EEXIST" ? outputExists(file) : notWritten(file, codeOf(problem)));
  }
}

/** What a link leads to, there or not yet: that is written, and the link stays. */
async function placeOf(file: string): Promise<string> {
  const place = await found((one) => realpath(one), file);
  if (place !== undefined) return place;
  const led = await found((one) => readlink(one), file);
  return path.resolve(path.dirname(file), led ?? path.basename(file));
}

/** A further name for the file fails where the name is taken, also where somebody took it a moment ago; renaming would write over that. */
async function putNew(unfinished: string, place: string): Promise<void> {
  try {
    await link(unfinished, place);
  } catch (problem) {
    if (codeOf(problem) === "EEXIST") throw problem;
    // Some drives give a file no second name.
    if ((await found(lstat, place)) !== undefined) throw new Refusal(outputExists(place));
    await rename(unfinished, place);
    return;
  }
  await unlink(unfinished);
}

/** Also through links, hard ones too, and under another spelling; numbers of files on Windows are longer than a double holds. */
async function isSameFile(one: string, other: string): Promise<boolean> {
  const [first, second] = [await found(numbered, one), await found(numbered, other)];
  if (first === undefined || second === undefined) return false;
  if (first.ino !== NO_NUMBER && second.ino !== NO_NUMBER) return first.dev === second.dev && first.ino === second.ino;
  // Some network drives number no files.
  const [place, otherPlace] = [await realpath(one), await realpath(other)];
  return place.toLowerCase() === otherPlace.toLowerCase();
}

const NO_NUMBER = BigInt(0);

const numbered = (file: string): Promise<BigIntStats> => stat(file, { bigint: true });

async function found<T>(ask: (file: string) => Promise<T>, file: string): Promise<T | undefined> {
  try {
    return await ask(file);
  } catch {
    return undefined;
  }
}
