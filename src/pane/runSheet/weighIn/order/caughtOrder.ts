import type { RunCells } from "../../../../explanation/runSheet/RunCells";
import { weighInWords } from "../../../../problems/runsheet/weighInWords";
import type { Caught } from "../../../../runsheet/sheet/Caught";
import { APPARATUS, LEDGER_BOXES } from "../../../../runsheet/sheet/caughtRows";
import type { Fired } from "../../../../runsheet/sheet/Weighed";
import { isSteady } from "./howFar";
import { isBlank, step, type Step, type Work } from "./Step";

/** Without the first receiver nothing is caught; what else is used, only the person knows. */
const FIRST_RECEIVER = APPARATUS.length;

/** Each sample's apparatus part by part, empty, until the fire is lit; what is needed, until its char is weighed. */
export function* caughtBefore({ cells }: Work<RunCells>, caught: Caught, table: Fired, inUse: readonly number[]): Generator<Step> {
  const { lit, measured, held, quiet, opened } = table.fire(table.rows.fire.first);
  const isLit = [lit, measured, held, quiet, opened].some((at) => !isBlank(cells, at));
  for (const sample of inUse)
    for (const part of caught.parts) {
      const isOptional = part !== FIRST_RECEIVER;
      if (!isLit || !isOptional) yield step(cells, caught.before(part, sample), { isOptional });
    }
}

/** The same parts with what they caught, then what the ledger rests on besides. */
export function* caughtAfter({ cells }: Work<RunCells>, caught: Caught, inUse: readonly number[]): Generator<Step> {
  for (const sample of inUse)
    for (const part of caught.parts) {
      if (isBlank(cells, caught.before(part, sample))) continue;
      const change = { at: caught.gain(part, sample), said: weighInWords.caught, doubtedBelow: weighInWords.lighterAfterFire };
      yield step(cells, caught.after(part, sample), { change, total: caught.rows.total });
    }
  for (const sample of inUse) {
    // Its moisture counts where a sample was fed moist alone, and how exact a percentage is, where there is one.
    const isFedMoist = !isSteady(cells, cells.sheet.drying);
    const hasPercent = (["water", "fed"] as const).some((name) => !isBlank(cells, caught.box(name, sample)));
    const asked = LEDGER_BOXES.filter((name) => (name === "fed" ? isFedMoist : name !== "known" || hasPercent));
    const over = inUse.flatMap((one) => LEDGER_BOXES.map((name) => caught.box(name, one))).filter((at) => isBlank(cells, at));
    for (const name of asked) yield step(cells, caught.box(name, sample), { isOptional: true, skips: [{ words: weighInWords.noLedger, over }] });
  }
}
