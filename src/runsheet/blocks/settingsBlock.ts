import { CONSTANCY_CRITERIA } from "../../drying/constantWeight/constancyCriteria";
import { plainNumber } from "../../problems/quoted";
import { cell } from "../expressions/Expression";
import { degreesFrom, inDegrees, typedDegrees } from "../options/degrees";
import { optionBounds } from "../options/optionBounds";
import type { CheckedOptions } from "../options/RunSheetOptions";
import { LABEL } from "../sheet/Columns";
import type { Setting } from "../sheet/layout";
import type { RunSheet } from "../sheet/RunSheet";
import { degreeWords } from "../words/BoxWords";
import { checkWords } from "../words/checkWords";
import { settingWords } from "../words/settingWords";
import { VESSEL_MATERIALS } from "../words/vesselMaterials";
import { band, ofCells, together, type Allowed, type Block } from "./Block";
import { ANYTHING, box, boxRule, numbers, oneOf, wideBox } from "./entries";

// Twice the sensitivity of the balance, ASTM D4442 method A: the one limit that every balance can decide.
const USUAL_CRITERION: (typeof CONSTANCY_CRITERIA)[number] = "readability";
const USUAL_LIMIT = 2;
// One percentage point; common practice, no source.
const USUAL_WANTED = 0.01;
// Minutes; local practice, no source.
const USUAL_CLOSED = 60;
const MINUTES_PER_HOUR = 60;
// As long as a kiln may be planned to cool.
const LONGEST_CLOSED = optionBounds.coolingHours.atMost * MINUTES_PER_HOUR;
// °C: the upper end of what EN 13183-1 and most standards dry wood at, 103 ± 2 °C.
const USUAL_OVEN = 105;
// A drum scale, as for weighings. g
const HEAVIEST = 1_000_000;

const prefilled = (options: CheckedOptions): Partial<Record<Setting, string | number>> => ({
  vessel: options.vessel,
  readability: options.readability,
  wanted: USUAL_WANTED,
  interval: options.intervalMinutes,
  ...(options.ovenCelsius === undefined ? {} : { oven: typedDegrees(options.ovenCelsius, options.degrees) }),
  criterion: USUAL_CRITERION,
  limit: USUAL_LIMIT,
  closed: USUAL_CLOSED,
  ...planned(options),
});

/** What a plan said of the settings. */
function planned({ plan }: CheckedOptions): Partial<Record<Setting, string | number>> {
  if (plan === undefined) return {};
  const { moistGrams, wantedUncertainty, repeatability, methodScatter, vesselMaterial, coolingHours } = plan;
  return {
    planned: moistGrams,
    wanted: wantedUncertainty,
    ...(repeatability === undefined ? {} : { repeatability }),
    ...(methodScatter === undefined ? {} : { methodScatter }),
    ...(vesselMaterial === undefined ? {} : { material: vesselMaterial }),
    // To the whole minute, upwards: it is a least time. Decimal hours miss one by binary rounding alone.
    ...(coolingHours === undefined ? {} : { closed: Math.ceil(Number(plainNumber(coolingHours * MINUTES_PER_HOUR))) }),
  };
}

const FORMATS: Partial<Record<Setting, string>> = { wanted: "0.0##%", methodScatter: "0.0##%" };

// Bounds only catch a slip of the hand: grams for milligrams, °F for °C, hours for minutes.
const allowed = ({ degrees }: CheckedOptions): Readonly<Record<Setting, Allowed>> => ({
  vessel: ANYTHING,
  material: oneOf([...VESSEL_MATERIALS.map(({ name }) => name), checkWords.material.noneOfThese]),
  readability: numbers(optionBounds.readability),
  repeatability: numbers({ atLeast: 0.0000001, atMost: 100 }),
  wanted: numbers(optionBounds.wanted),
  interval: numbers(optionBounds.interval),
  oven: numbers(inDegrees(optionBounds.oven, degrees)),
  criterion: oneOf(CONSTANCY_CRITERIA),
  limit: numbers({ atLeast: 0, atMost: 1000 }),
  closed: numbers({ atLeast: 0, atMost: LONGEST_CLOSED }),
  methodScatter: numbers({ atLeast: 0.000001, atMost: 1 }),
  planned: numbers({ atLeast: 0, atMost: HEAVIEST }),
});

const WIDE: readonly Setting[] = ["vessel", "material", "criterion"];

/** What the verdicts and the ± rest on: a label, a box and what it is for. */
export function settingsBlock(sheet: RunSheet): Block {
  const { rows, options, columns, settings } = sheet;
  const [contents, allow] = [prefilled(options), allowed(options)];
  const { degrees } = options;
  return together(
    ofCells(...band(sheet, rows.settings.heading, "runBand", { [LABEL]: settingWords.heading, [LABEL + 2]: settingWords.about })),
    ...(Object.keys(rows.settings.boxes) as Setting[]).map((name): Block => {
      const { label, title, prompt, refusal, help: usual } = settingWords.boxes[name];
      const help = name === "oven" && degrees === "F" ? settingWords.ovenFahrenheit(degreesFrom(USUAL_OVEN, degrees)) : usual;
      const [at, content, format] = [settings[name], contents[name], FORMATS[name]];
      const look = { ...(content === undefined ? {} : { content }), ...(format === undefined ? {} : { format }) };
      const said = name === "oven" ? degreeWords(title, prompt, degrees, inDegrees(optionBounds.oven, degrees)) : { title, prompt, refusal };
      const isWide = WIDE.includes(name);
      const lastBox = columns.box(1, 2).column;
      return together(
        ofCells(
          { at: cell(at.row, LABEL), content: name === "oven" ? `${label}, °${degrees}` : label, style: "runLabel" },
          { at: cell(at.row, isWide ? lastBox + 1 : LABEL + 2), content: help, style: "runBeside" },
        ),
        isWide ? wideBox(at, lastBox, said, allow[name], look) : { cells: [box(at, look)], entryRules: [boxRule(at, said, allow[name])] },
      );
    }),
  );
}
