import type { RunKind } from "../runsheet/options/RunSheetOptions";
import { element } from "./element";

const KINDS: readonly (readonly [kind: RunKind, label: string, about: string])[] = [
  ["drying", "Drying only", "warm the sample until its weight holds"],
  ["charring", "Drying and charring", "then heat it without air"],
  ["ashing", "Drying, charring and ashing", "then burn the char off in air"],
];

/** The kinds of run as a set of radio buttons. */
export function kindChoice(legend: string, start: RunKind): { block: HTMLFieldSetElement; chosen: () => RunKind } {
  const radios = KINDS.map(([kind]) =>
    element("input", { type: "radio", name: "run-kind", value: kind, id: `run-kind-${kind}`, checked: kind === start }),
  );
  const choices = KINDS.map(([, label, about], index) => {
    const radio = radios[index] as HTMLInputElement;
    return element("label", { class: "choice", for: radio.id }, radio, element("span", {}, label, element("small", {}, about)));
  });
  return {
    block: element("fieldset", {}, element("legend", {}, legend), ...choices),
    chosen: () => KINDS[radios.findIndex(({ checked }) => checked)]?.[0] ?? start,
  };
}
