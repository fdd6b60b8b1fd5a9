import { readdirSync } from "node:fs";
import path from "node:path";
import type { Evidence } from "./missingEvidence";

/** All the evidence of one function, and what its answer is called with the unit it is given in ("" where there is none). */
export interface FunctionEvidence extends Evidence {
  readonly name: string;
  readonly answer: readonly [about: string, unit: string];
}

/** What the files of a folder export as `evidence`, one function each. Folders in it are passed over. */
export const evidenceIn = (folder: string): FunctionEvidence[] =>
  readdirSync(folder)
    .filter((file) => file.endsWith(".ts"))
    .sort()
    .map((file) => {
      const { evidence } = jest.requireActual<{ evidence?: FunctionEvidence }>(path.join(folder, file));
      if (evidence === undefined) throw new Error(`${path.join(folder, file)} exports no "evidence"`);
      const fileName = `${evidence.name.replaceAll(".", "")}.ts`;
      if (file.toUpperCase() !== fileName.toUpperCase()) throw new Error(`${file} holds the evidence of ${evidence.name}`);
      return evidence;
    });

export const EVIDENCE_FOLDER = path.join(__dirname, "evidence");

/** The evidence of each function that has a file of its own; the others' stands in the lists of their families. */
export const evidenceFiles: readonly FunctionEvidence[] = evidenceIn(EVIDENCE_FOLDER);
