import { elementsAndIsotopes } from "chemical-elements";
import { AME_2020 } from "../print/ame2020";
import { CIAAW_2021 } from "../print/ciaaw2021";

// A second route to a molar mass, sharing no code with the program: brackets are multiplied out on the text itself, innermost first, to
// terms "symbol*count", and weights come from the printed tables kept beside the tests.
const printed = new Map(CIAAW_2021.map(([symbol = "", , value = ""]) => [symbol, Number(value.replace(/\(.*$/, ""))] as const));
const nuclides = new Map(AME_2020.map(([nuclide, mass]) => [nuclide, Number(mass)] as const));
const known = new Set(elementsAndIsotopes.map(({ symbol }) => symbol));
const FRACTIONS: Readonly<Record<string, string>> = { "½": "0.5" };

const weightOf = (symbol: string): number => {
  if (symbol === "D") return nuclides.get("2H") ?? NaN;
  if (symbol === "T") return nuclides.get("3H") ?? NaN;
  return (/^\d/.test(symbol) ? nuclides.get(symbol) : known.has(symbol) ? printed.get(symbol) : NaN) ?? NaN;
};

/** "CaOH" with counts as " Ca*1 O*1 H*1", all counts times a factor. */
const terms = (plain: string, factor: number): string =>
  [...plain.matchAll(/([A-Z][a-z]?)([\d.]*)|\s?(\d*[A-Z][a-z]?)\*([\d.e-]+)/g)]
    .map(([, symbol, count, done, amount]) =>
      done === undefined ? ` ${symbol}*${Number(count || 1) * factor}` : ` ${done}*${Number(amount) * factor}`,
    )
    .join("");

function multipliedOut(part: string): string {
  let text = part;
  for (let before = ""; before !== text;) {
    before = text;
    text = text.replace(/[([]([^()[\]]*)[)\]]([\d.]*)/, (_, inside: string, count: string) => {
      const isotope = /^(\d+)([A-Z][a-z]?)(\d*)$/.exec(inside);
      return isotope === null ? mixed(inside, Number(count || 1)) : ` ${isotope[1]}${isotope[2]}*${Number(isotope[3] || 1) * Number(count || 1)}`;
    });
  }
  return mixed(text, 1);
}

/** Finished terms stand between spaces; what is still plain lies between them. */
const mixed = (text: string, factor: number): string =>
  text
    .split(/( \d*[A-Z][a-z]?\*[\d.e-]+)/)
    .map((piece) => terms(piece, factor))
    .join("");

/** The molar mass of a formula [g/mol], for formulas without a state: hydrate dots, decimals, isotopes in brackets and charges behind a caret. */
export function massByHand(formula: string): number {
  const text = formula
    .replace(/\^[\d]*[+-]$/, "")
    .replace(/(\d)(\d)[+-]$/, "$1")
    .replace(/[+-]$/, "")
    .replace(/(?:\^13|¹³)([A-Z])/, "[13$1]")
    .replace(/½/g, (fraction) => FRACTIONS[fraction] ?? "");
  return text.split("·").reduce((sum, part) => {
    const [, amount = "", rest = ""] = /^([\d.]*)(.*)$/.exec(part) ?? [];
    const atoms = [...multipliedOut(rest).matchAll(/(\d*[A-Z][a-z]?)\*([\d.e-]+)/g)];
    return sum + Number(amount || 1) * atoms.reduce((mass, [, symbol = "", count]) => mass + Number(count) * weightOf(symbol), 0);
  }, 0);
}
