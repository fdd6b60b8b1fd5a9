import { molarMass } from "../../chemistry/molarMass";
import { parseFormula } from "../../chemistry/parseFormula";
import { LARGEST_SHARE } from "../../confidence/lossUncertainty";
import { COVERAGE, hydrateFormula, MOST_LISTED, SIMPLE, SLACK as VERDICT_SLACK } from "../../decomposition/hydrateVerdict";
import { anhydrousSalt } from "../../decomposition/hydrateWater";
import { numberText } from "../../inputs/numberText";
import { hydrateBetween, hydrateFits, hydrateOpen, NO_HYDRATE_VERDICT, NO_WATER_TOLD } from "../../problems/functions/decompositionProblems";
import { balanceTooCoarseHere, notOneHydrate } from "../../problems/sharing/plainCellProblems";
import { label } from "../inCells/formulaInCells";
import { orderInCells, SLACK } from "../inCells/orderInCells";
import type { RefusalInCells } from "../inCells/RefusalInCells";
import { filledInCells, textInCells } from "../inCells/sentenceInCells";
import { isTypedText, typedTextOf } from "../inCells/typedInCells";
import type { TableInCells, Workings } from "../inCells/Workings";
import { isGivenInCells, numberInCells } from "../numberInCells";
import { operand } from "../operand";

type Texts = Readonly<Record<"vessel" | "before" | "after" | "anhydrous" | "u", string>>;

/** What `hydrateWater` refuses of weighings. */
export function hydrateRefusals({ vessel, before, after, u }: Texts): readonly RefusalInCells[] {
  const empty = numberInCells(vessel, 0);
  return [
    orderInCells({ vessel, before, after }),
    { when: `${operand(after)}-${empty}<=${SLACK}`, says: notOneHydrate },
    { when: u === "" ? "0" : `${numberInCells(u, 0)}>${LARGEST_SHARE}*(${operand(before)}-${empty})`, says: balanceTooCoarseHere, noAnswer: true },
  ];
}

/**
 * The table of HYDRATEWATER; undefined where the salt stands in a cell.
 * @throws InputProblem for a salt that does not serve
 */
export function hydrateTable(texts: Texts, workings: Workings): TableInCells | undefined {
  const { vessel, before, after, anhydrous, u } = texts;
  if (!isTypedText(anhydrous)) return undefined;
  const salt = anhydrousSalt(typedTextOf(anhydrous));
  const ratio = numberText(molarMass(salt) / molarMass(parseFormula("H2O")));
  const [empty, loaded, heated, isGiven] = [numberInCells(vessel, 0), operand(before), operand(after), isGivenInCells(u)];
  const [lost, left, sample] = [`(${loaded}-${heated})`, `(${heated}-${empty})`, `(${loaded}-${empty})`];
  // As LOSSFRACTION.U: what is left over the sample is 1 - w.
  const tared = `1+(${left}/${sample})^2`;
  const spread = `${numberInCells(u, 0)}/${sample}*SQRT(${tared}+IF(${empty}=0,0,(${lost}/${sample})^2))`;
  let [n, uncertainty, nearest, words] = ["", "", "", ""];
  workings.block("Water of the hydrate: n, its u, from and to within 2 u", 1, 4, (at) => {
    const [from, to] = [at(0, 2), at(0, 3)];
    [n, uncertainty] = [at(0, 0), at(0, 1)];
    ({ nearest, words } = verdictInCells(salt.text.trim(), { n, from, to, isGiven }, workings));
    const within = `${COVERAGE}*${uncertainty}+${VERDICT_SLACK}`;
    return [[`${lost}/${left}*${ratio}`, `${ratio}/(${left}/${sample})^2*${spread}`, `${n}-(${within})`, `${n}+${within}`]];
  });
  return [
    ["Hydrate", "Value"].map(label),
    [label("Water lost, share of the hydrate"), `${lost}/${sample}`],
    [label("Water per formula, n"), n],
    [label("its standard uncertainty"), `IF(${isGiven},${uncertainty},"")`],
    [label("Nearest"), nearest],
    [label("Verdict"), words],
  ];
}

interface RangeInCells {
  readonly n: string;
  readonly from: string;
  readonly to: string;
  readonly isGiven: string;
}

/** As `hydrateVerdict` has it: the first few whole, half and third numbers of waters from `from` to `to`, each by its formula. */
function verdictInCells(salt: string, { n, from, to, isGiven }: RangeInCells, workings: Workings): { nearest: string; words: string } {
  const parts = [1, ...SIMPLE];
  let verdict = { nearest: "", words: "" };
  workings.block("Waters within 2 u by whole, half, third: first, how many looked at, then each", parts.length, 2 + MOST_LISTED, (at) => {
    const [first, count] = [(row: number) => at(row, 0), (row: number) => at(row, 1)];
    const names = (row: number): string => Array.from({ length: MOST_LISTED }, (_, index) => at(row, 2 + index)).join("&");
    // Each name has ", " before it.
    const list = (text: string): string => `MID(${text},3,999)`;
    const simple = parts.slice(1).map((_, row) => names(row + 1)).join("&"); // prettier-ignore
    const named = parts.slice(1).map((_, row) => `COUNTIF(${at(row + 1, 2)}:${at(row + 1, 1 + MOST_LISTED)},"?*")`).join("+"); // prettier-ignore
    const only = parts.slice(1).reduceRight((rest, part, row) => `IF(${names(row + 1)}="",${rest},${lone(at, row + 1)}/${part})`, '""');
    const open = (text: string): string => filledInCells(hydrateOpen([MARK]), [[MARK, list(text)]]);
    const fits = (name: string): string => filledInCells(hydrateFits(MARK, []), [[MARK, name]]);
    const fitsBeside = filledInCells(hydrateFits(MARK, [BESIDE]), [[MARK, list(names(0))], [BESIDE, list(simple)]]); // prettier-ignore
    const between = filledInCells(hydrateBetween(BELOW, ABOVE), [[String(BELOW), `INT(${n})`], [String(ABOVE), `(-INT(-${n}))`]]); // prettier-ignore
    const whole = `IF(${first(0)}=0,${textInCells(NO_WATER_TOLD)},IF(${named},${fitsBeside},${fits(list(names(0)))}))`;
    const partly = `IF(${named},IF(${named}>1,${open(simple)},${fits(list(simple))}),${between})`;
    const said = `IF(${count(0)}>1,${open(names(0))},IF(${count(0)}=1,${whole},${partly}))`;
    verdict = {
      nearest: `IF(${isGiven},IF(${count(0)}=1,${first(0)},IF((${count(0)}=0)*(${named}=1),${only},ROUND(${n},0))),ROUND(${n},0))`,
      words: `IF(${isGiven},${said},${textInCells(NO_HYDRATE_VERDICT)})`,
    };
    return parts.map((part, row) => [
      `MAX(0,-INT(-${part}*${from}))`,
      `MAX(0,MIN(${MOST_LISTED},INT(${part}*${to})-${first(row)}+1))`,
      ...Array.from({ length: MOST_LISTED }, (_, index) => nameInCells(salt, part, `(${first(row)}+${index})`, `${count(row)}>${index}`)),
    ]);
  });
  return verdict;
}

// Stand in sentences where names do.
const MARK = "\u0001";
const BESIDE = "\u0002";
const BELOW = 4567;
const ABOVE = 6789;

/** The count of waters of the only name in a row. */
function lone(at: (row: number, column: number) => string, row: number): string {
  const counts = Array.from({ length: MOST_LISTED }, (_, index) => `IF(${at(row, 2 + index)}="",0,${at(row, 0)}+${index})`);
  return `(${counts.join("+")})`;
}

/** ", CuSO4·5H2O" where the number is looked at and is none of the whole ones, else "". */
function nameInCells(salt: string, part: number, waters: string, isLookedAt: string): string {
  const [before = "", after = ""] = hydrateFormula(salt, BELOW, part).split(String(BELOW));
  const name = `${textInCells(`, ${before}`)}&IF(${waters}=1,"",${waters})&${textInCells(after)}`;
  const whole = part === 1 ? `IF(${waters}=0,${textInCells(`, ${salt}`)},${name})` : `IF(MOD(${waters},${part})=0,"",${name})`;
  return `IF(${isLookedAt},${whole},"")`;
}
