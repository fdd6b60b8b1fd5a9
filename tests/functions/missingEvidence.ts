import type { Published } from "../published/Published";
import { literalArguments, nameIn } from "./call";
import type { Law } from "./laws/Law";
import type { Refusal } from "./refusals/Refusal";

/** All that is held against the cell functions from outside. */
export interface Evidence {
  readonly published: readonly Published[];
  readonly laws: readonly Law[];
  readonly refusals: readonly Refusal[];
}

const ITS_FILE = "its file in tests/functions/evidence";

export const NEEDED = {
  value: `a published or independently computed value (${ITS_FILE}, or tests/published); what is only remembered does not count`,
  law: `a law, or a comparison with an independent library (${ITS_FILE}, or tests/functions/laws)`,
  blank: `the refusal of a blank cell (${ITS_FILE}, or tests/functions/refusals)`,
  kind: `the refusal of text where a number is wanted, or of a number or another word where text is wanted, quoted as "… is not …" (${ITS_FILE})`,
  slip: `the refusal of a slip of the trade, named as such: a Slip of tests/functions/refusals/Refusal.ts (${ITS_FILE})`,
} as const;

/** What each function still lacks, one line each; none where all have their evidence. */
export function missingEvidence(functions: readonly { readonly name: string }[], evidence: Evidence): string[] {
  return functions.flatMap(({ name }) => {
    const refusals = evidence.refusals.filter(([cell]) => nameIn(cell) === name);
    const has: Readonly<Record<keyof typeof NEEDED, boolean>> = {
      value: evidence.published.some((row) => nameIn(row.cell) === name && row.kind !== "from memory" && row.kind !== "common practice"),
      law: evidence.laws.some((one) => one.functions.includes(name)),
      blank: refusals.some(isOfBlank),
      kind: refusals.some(isOfWrongKind),
      slip: refusals.some(([, , slip]) => slip !== undefined),
    };
    return (Object.keys(NEEDED) as (keyof typeof NEEDED)[]).filter((kind) => !has[kind]).map((kind) => `${name} lacks ${NEEDED[kind]}`);
  });
}

const isOfBlank = ([, says]: Refusal): boolean => says.includes(": nothing here (blank");

/** The message quotes an argument, or a cell of one, as something that it is not. */
const isOfWrongKind = ([cell, says]: Refusal): boolean =>
  literalArguments(cell)
    .flatMap((raw) => (Array.isArray(raw) ? (raw.flat() as unknown[]) : [raw]))
    .some((raw) => {
      const quoted = typeof raw === "string" ? `"${raw}"` : String(raw).toUpperCase();
      return [`: ${quoted} is not `, `: ${quoted} is text`, ` holds ${quoted}, `].some((saying) => says.includes(saying));
    });
