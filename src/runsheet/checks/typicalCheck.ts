import { sampleColumnCell } from "../bySample";
import type { Share } from "../quantities";
import { IN_ORDER, type CheckFormula } from "./Check";

/** What TYPICALRANGE calls each share that it knows. */
const QUANTITY = { moistureWet: "moisture", charYield: "char yield", ash: "ash" } as const satisfies Partial<Record<Share, string>>;
// A figure more than results are shown with.
const DECIMALS = 4;
const INSIDE = "inside";

/** Whether one sample's shares are such as the literature reports for plant matter. */
export const typicalCheck: CheckFormula = (rows, sample) => {
  const shares = (Object.keys(QUANTITY) as (keyof typeof QUANTITY)[]).filter((share) => rows.results.has(share));
  const cells = shares.map((share) => sampleColumnCell(rows.results.get(share) as number, sample));
  const finding = shares.reduceRight((otherwise, share, index) => {
    const value = `ROUND(${cells[index]},${DECIMALS})`;
    const call = `RETORT.TYPICALRANGE("${QUANTITY[share]}",${value})`;
    const nothingLeft = share === "moistureWet" ? "" : `IF(${value}=0,"no ${QUANTITY[share]} at all: check the weighings",`;
    const judged = `${nothingLeft}IF(LEFT(${call},${INSIDE.length})="${INSIDE}",${otherwise},${call})${nothingLeft === "" ? "" : ")"}`;
    return `IF(COUNT(${cells[index]})=0,${otherwise},${judged})`;
  }, IN_ORDER);
  return `IF(COUNT(${cells.join(",")})=0,"",${finding})`;
};
