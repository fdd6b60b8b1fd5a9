import { element } from "./element";
import { checkBox } from "./field";
import { EXTRA_LABELS, type ExtraName, type RunSheetForm } from "./runSheetForm";

const HINTS: Readonly<Record<ExtraName, string>> = {
  panZeros: "corrects weighings for drift",
  temperatures: "flags a sample weighed warm",
};

/** The columns that a run sheet may have on top of the usual ones, as boxes to tick. */
export function extraColumns(): { block: HTMLElement; ticked: () => Pick<RunSheetForm, ExtraName> } {
  const box = (name: ExtraName): ReturnType<typeof checkBox> => checkBox(`run-${name}`, EXTRA_LABELS[name], HINTS[name]);
  const [panZeros, temperatures] = [box("panZeros"), box("temperatures")];
  return {
    block: element("fieldset", { class: "extras" }, element("legend", {}, "Extra columns"), panZeros.block, temperatures.block),
    ticked: () => ({ panZeros: panZeros.control.checked, temperatures: temperatures.control.checked }),
  };
}
