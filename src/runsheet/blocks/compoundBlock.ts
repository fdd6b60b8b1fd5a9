import { all, firstOf, isNumber, NOTHING, when } from "../expressions/choices";
import { cell, fn, is, type Expression } from "../expressions/Expression";
import { percent } from "../formulas/percent";
import { equationOf, isGiven, isUnreadHere, onlyWater, residueMassOf, startMassOf, theoryOf, watersByTheory } from "../formulas/salt";
import { LABEL } from "../sheet/Columns";
import type { RunSheet } from "../sheet/RunSheet";
import type { Salt } from "../sheet/Salt";
import { saltWords } from "../words/saltWords";
import { band, calculated, ofCells, together, working, workingLabel, type Block } from "./Block";
import { ANYTHING, oneOf, wideBox } from "./entries";

const { labels, beside, workings, choices } = saltWords;

/** What the salt or mineral is, what stays of it, whether surface water is dried off first; beside each what follows by theory. */
export function compoundBlock(sheet: RunSheet, salt: Salt): Block {
  const { columns, options } = sheet;
  const { rows } = salt;
  const lastBox = columns.box(1, columns.slots).column;
  const right = columns.reckoned(1, 1).column;
  const content = (text: string | undefined) => (text === undefined ? {} : { content: text });
  return together(
    ofCells(
      ...band(sheet, rows.heading, "runBand", { [LABEL]: saltWords.heading, [right]: saltWords.about }),
      ...(["formula", "residue", "water"] as const).map(
        (name) => ({ at: cell(rows[name], LABEL), content: labels[name], style: "runLabel" }) as const,
      ),
      calculated(cell(rows.formula, right), formulaSays(salt), "runBeside"),
      calculated(cell(rows.residue, right), residueSays(salt), "runBeside"),
      calculated(cell(rows.water, right), waterSays(salt), "runBeside"),
      workingLabel(sheet, rows.formula, workings.theory),
      working(salt.theory, theoryOf(salt), "0.000000"),
      working(salt.startMass, startMassOf(salt), "0.000"),
      workingLabel(sheet, rows.residue, workings.equation),
      working(salt.equation, equationOf(salt)),
      working(salt.residueMass, residueMassOf(salt), "0.000"),
      workingLabel(sheet, rows.water, workings.waters),
      working(salt.waters, watersByTheory(salt), "0.0000"),
      working(salt.isWater, onlyWater(salt), "0"),
    ),
    wideBox(salt.formula, lastBox, saltWords.formulaBox, ANYTHING, content(options.formula)),
    wideBox(salt.residue, lastBox, saltWords.residueBox, ANYTHING, content(options.residue)),
    wideBox(salt.water, lastBox, saltWords.waterBox, oneOf(Object.values(choices)), { content: choices.asWeighed }),
  );
}

const formulaSays = (salt: Salt): Expression =>
  firstOf(
    [
      [all(fn("ISERROR", salt.startMass), isUnreadHere(salt)), beside.notHere],
      [fn("ISERROR", salt.startMass), beside.unread],
      [isNumber(salt.theory), beside.loses(percent(salt.theory, 2))],
    ],
    when(isGiven(salt.formula), NOTHING, beside.formula),
  );

const residueSays = (salt: Salt): Expression =>
  firstOf(
    [
      [isUnreadHere(salt), beside.notHere],
      [all(isNumber(salt.startMass), fn("ISERROR", salt.theory)), beside.notFrom],
      [fn("ISERROR", salt.residueMass), beside.unread],
      [isNumber(salt.theory), salt.equation],
    ],
    when(isGiven(salt.residue), NOTHING, beside.residue),
  );

const waterSays = ({ water }: Salt): Expression =>
  firstOf(
    [
      [is(water, "=", choices.asWeighed), beside.asWeighed],
      [is(water, "=", choices.driedFirst), beside.driedFirst],
    ],
    beside.sayWhich,
  );
