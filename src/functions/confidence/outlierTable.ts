import type { OutlierQuestion } from "../../confidence/OutlierQuestion";
import type { OutlierTest } from "../../confidence/OutlierTest";
import { outlierVerdict } from "../../confidence/outlierVerdict";
import type { Shown } from "../cellFunction";
import { askedAs } from "./askedAs";

/** The table that both outlier tests spill. */
export const outlierTable = (statistic: string, test: OutlierTest, question: OutlierQuestion): readonly (readonly Shown[])[] => [
  ["Quantity", "Value"],
  ["Results, n", test.count],
  ["Suspect", test.suspect.value],
  ["Row of the suspect in values", test.suspect.row],
  [statistic, test.statistic],
  [`Critical value, ${askedAs(question)}`, test.critical],
  ["Verdict", outlierVerdict(test)],
];
