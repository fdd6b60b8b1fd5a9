import { readFile, stat } from "node:fs/promises";
import path from "node:path";
import { inputIsFolder, inputMissing, inputNotReadable } from "../words/refusals";
import { Refusal } from "../Refusal";

export const codeOf = (problem: unknown): string => (problem as { readonly code?: string } | null)?.code ?? String(problem);

/** The content of a file that is to be read. @throws Refusal in words */
export async function contentOf(file: string): Promise<Uint8Array<ArrayBuffer>> {
  try {
    if ((await stat(file)).isDirectory()) throw new Refusal(inputIsFolder(file));
    return new Uint8Array(await readFile(file));
  } catch (problem) {
    if (problem instanceof Refusal) throw problem;
    const code = codeOf(problem);
    throw new Refusal(code === "ENOENT" || code === "ENOTDIR" ? inputMissing(file) : inputNotReadable(file, code));
  }
}

/**
 * A name beside a file: "run.xlsx" and " values" give "run values.xlsx".
 * @param paths of the system whose names these are
 */
export function besideFile(file: string, ending: string, extension?: string, paths: path.PlatformPath = path): string {
  // What stands before the name stays as it was typed: "C:run.xlsx" is in the folder that drive C: is in, and a path behind \\?\ is not tidied.
  const { base, name, ext } = paths.parse(file);
  return `${file.slice(0, file.length - base.length)}${name}${ending}${extension ?? ext}`;
}
