import { everyFunction, NAMESPACE } from "../functions/catalogue";

// How a workbook file names the functions of an add-in, with underscores for dots, until the add-in has loaded
// (OfficeDev/office-js issues 3558 and 5611).
const STORED = `_xldudf_${NAMESPACE}_`;
const byStoredName: ReadonlyMap<string, string> = new Map(everyFunction.map(({ name }) => [name.replaceAll(".", "_"), name]));
const STORED_CAPITALS = STORED.toUpperCase();
const TYPED = `${NAMESPACE}.`;

/**
 * The catalogue's name for a function name found in a cell formula, typed ("retort.moisture.wet") or stored
 * ("_xldudf_RETORT_MOISTURE_WET"), or undefined when it is not in our namespace. A name the catalogue does not have is
 * given in capitals as it stands.
 */
export function catalogueName(written: string): string | undefined {
  const capitals = written.toUpperCase();
  if (capitals.startsWith(TYPED)) return capitals.slice(TYPED.length);
  if (!capitals.startsWith(STORED_CAPITALS)) return undefined;
  const underscored = capitals.slice(STORED.length);
  return byStoredName.get(underscored) ?? underscored;
}
