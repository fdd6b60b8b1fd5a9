import { InputProblem } from "../InputProblem";
import { plainNumber, SIZE_FIGURES, withUnit } from "../quoted";

export const grown = (after: number, before: number): InputProblem =>
  new InputProblem(
    "after",
    `${plainNumber(after)} is more than before, ${plainNumber(before)}`,
    "Check for swapped cells; a body that bloats has no shrinkage.",
  );

export const shrunkTooMuch = (after: number, before: number): InputProblem =>
  new InputProblem("after", `${plainNumber(after)} is less than half of before, ${plainNumber(before)}`, "Give one length, in one unit.");

export const trayTooHeavy = (tray: number, dry: number): InputProblem =>
  new InputProblem("tray", `${withUnit(tray, "g")} is not less than dry, ${withUnit(dry, "g")}`, "Give the tray that both weighings include.");

export const lighterWhenSoaked = (saturated: number, dry: number): InputProblem =>
  new InputProblem("saturated", `${withUnit(saturated, "g")} is less than dry, ${withUnit(dry, "g")}`, "Check for swapped cells or a chip lost.");

export const soakedTooHeavy = (share: number, most: number): InputProblem =>
  new InputProblem(
    "saturated",
    `${withUnit(share, "g", SIZE_FIGURES)} of water for each gram, above ${most}`,
    "Wipe the piece, and give a tray in both weighings or in none.",
  );

export const lighterThanVessel = (full: number, vessel: number): InputProblem =>
  new InputProblem(
    "full",
    `${withUnit(full, "g")} is not more than vessel, ${withUnit(vessel, "g")}`,
    "Check for swapped cells or a different vessel.",
  );

export const lighterThanWater = (density: number): InputProblem =>
  new InputProblem(
    "full",
    `${withUnit(density, "g/L", SIZE_FIGURES + 1)} is lighter than water`,
    "Give volume in mL (1 L is 1000), and the empty vessel.",
  );

export const denserThanSolid = (density: number, solid: number): InputProblem =>
  new InputProblem(
    "full",
    `${withUnit(density, "g/L", SIZE_FIGURES + 1)} is no slip of grains of ${withUnit(solid, "kg/m³")}`,
    "Give volume in mL (1 L is 1000), and the empty vessel.",
  );
