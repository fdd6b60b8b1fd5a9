import { createHash } from "node:crypto";
import { functionsMetadata } from "../../../src/cells/metadata";
import { everyFunction } from "../../../src/functions/catalogue";
import { functionPageFile } from "../../../src/help/functionPage";

interface Metadata {
  readonly functions: readonly {
    readonly id: string;
    readonly parameters: readonly { readonly name: string; readonly optional?: boolean; readonly dimensionality: string }[];
    readonly result: { readonly dimensionality: string };
  }[];
}

/** What saved workbooks rely on, under each id: `vessel:matrix, [ash]:matrix -> matrix`, optional inputs in brackets. */
export type Promises = Readonly<Record<string, string>>;

// Without the address that the pages are served from, which each build is told.
const metadata = functionsMetadata(everyFunction, functionPageFile) as Metadata;

export const presentPromises: Promises = Object.fromEntries(
  metadata.functions.map(({ id, parameters, result }) => [
    id,
    `${parameters.map(({ name, optional, dimensionality }) => `${optional === true ? `[${name}]` : name}:${dimensionality}`).join(", ")} -> ${result.dimensionality}`,
  ]),
);

/** A digest of everything in functions.json but the address of its help pages. */
export const presentMetadata = (): string => createHash("sha256").update(JSON.stringify(metadata)).digest("hex");

/** What one version published: the digest of its functions.json, and the promises that are new or longer in it. */
export interface Released {
  readonly functionsJson: string;
  readonly promises: Promises;
}

/** The promises after these versions, oldest first. @throws Error for one that breaks an earlier */
export const promisedBy = (versions: readonly Released[]): Promises =>
  versions.reduce<Promises>((before, { promises }) => {
    const broken = brokenPromises(before, { ...before, ...promises });
    if (broken.length > 0) throw new Error(`a later version breaks what an earlier one promised: ${broken.join("; ")}`);
    return { ...before, ...promises };
  }, {});

/** Each promise that is gone, or changed other than by optional inputs at its end. */
export const brokenPromises = (before: Promises, after: Promises): string[] =>
  Object.entries(before).flatMap(([id, line]) => (keeps(line, after[id]) ? [] : [`${id}: ${line} became ${after[id] ?? "nothing"}`]));

function keeps(before: string, after: string | undefined): boolean {
  if (after === undefined) return false;
  const [[inputs, gives], [inputsAfter, givesAfter]] = [parts(before), parts(after)];
  const added = inputsAfter.slice(inputs.length);
  return gives === givesAfter && inputs.every((input, index) => input === inputsAfter[index]) && added.every((input) => input.startsWith("["));
}

const parts = (line: string): [inputs: string[], gives: string | undefined] => {
  const [inputs = "", gives] = line.split(" -> ");
  return [inputs === "" ? [] : inputs.split(", "), gives];
};
