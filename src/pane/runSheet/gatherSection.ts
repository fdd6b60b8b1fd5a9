import { gatherRuns } from "../../runsheet/gathering/gatherRuns";
import { counted, quoted } from "../../problems/quoted";
import type { Workbook } from "../../workbook/Workbook";
import { button, element } from "../element";
import { Messages } from "../Messages";

/** Makes a sheet with one row a sample from every run sheet of the workbook. */
export function gatherSection(workbook: Workbook): HTMLElement {
  const messages = new Messages();
  const gather = button("Gather runs", "secondary", () => void messages.report(gather, gathered));
  const gathered = async (): Promise<string> => {
    const { sheet, samples, runs, leftOut, withoutVapour = [], sameNames = [], isDemo } = await gatherRuns(workbook);
    const without = leftOut.map((one) => ` Left out: ${quoted(one.sheet)}, ${one.why}.`).join("");
    const lossAlone = withoutVapour.map((one) => ` No vapour share: ${quoted(one.sheet)}, ${one.why}.`).join("");
    const alike = sameNames
      .map((one) => ` ${quoted(one.name)} names ${counted(one.samples, "sample")}: they are numbered, 1 of ${one.samples} and on.`)
      .join("");
    const demo = isDemo === true ? " All of it is demo data, made up." : "";
    return `Gathered ${counted(samples, "sample")} of ${counted(runs, "run sheet")} on a new sheet, "${sheet}". It follows later corrections.${alike}${demo}${without}${lossAlone}`;
  };
  return element(
    "section",
    { class: "gather", "aria-labelledby": "gather-heading" },
    element("h2", { id: "gather-heading" }, "Several runs"),
    element("p", { class: "hint" }, "Adds a sheet with one row a sample from every run sheet: median, scatter, what stands apart, a target band."),
    gather,
    messages.region,
  );
}
