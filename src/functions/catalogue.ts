import { balance } from "./balance";
import { burning } from "./burning";
import type { CellFunction } from "./cellFunction";
import { compound } from "./compound";
import { confidence } from "./confidence";
import { decomposition } from "./decomposition";
import { drying } from "./drying";
import { liquids } from "./liquids";
import { energy } from "./energy";
import { furnace } from "./furnace";
import { pottery } from "./pottery";
import { reporting } from "./reporting";
import { residue } from "./residue";
import { sense } from "./sense";

/** What is typed before a function's name in a cell. */
export const NAMESPACE = "RETORT";

/** The functions of one trade subject, under the heading the pane and the reference pages give it. */
export interface Family {
  readonly heading: string;
  readonly functions: readonly CellFunction[];
}

/** Every cell function there is. Metadata, associations, help, the pane and the tests are made from this list. */
export const catalogue: readonly Family[] = [
  { heading: "Compound", functions: compound },
  { heading: "Burning", functions: burning },
  { heading: "Drying", functions: drying },
  { heading: "Residue", functions: residue },
  { heading: "Decomposition", functions: decomposition },
  { heading: "Liquids", functions: liquids },
  { heading: "Balance", functions: balance },
  { heading: "Confidence", functions: confidence },
  { heading: "Sense", functions: sense },
  { heading: "Furnace", functions: furnace },
  { heading: "Energy", functions: energy },
  { heading: "Reporting", functions: reporting },
  { heading: "Pottery", functions: pottery },
];

export const everyFunction: readonly CellFunction[] = catalogue.flatMap((family) => family.functions);
