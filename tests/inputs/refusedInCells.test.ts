import { choice } from "../../src/inputs/choice";
import { furnaceTemperature, heatedTemperature, thermometerReading } from "../../src/inputs/kinds/furnace";
import { oxygenInAir } from "../../src/inputs/kinds/oxygen";
import { airChangesPerHour } from "../../src/inputs/kinds/roomAir";
import { ashShare, fraction } from "../../src/inputs/kinds/shares";
import { roomTemperature } from "../../src/inputs/kinds/temperatures";
import { leastMinutes } from "../../src/inputs/kinds/times";
import { mass, massLost, vesselMass } from "../../src/inputs/kinds/weighings";
import { asGiven, formulaText, truth } from "../../src/inputs/kinds/words";
import { airDensityInput } from "../../src/inputs/kinds/air";
import { omittable, optional } from "../../src/inputs/optional";
import { refusedInCells } from "../../src/inputs/refusedInCells";

const number = "ISNUMBER(B2)>ISLOGICAL(B2)";
const kelvin = "(B2>=273.15)*(ABS(B2-INT(B2)-0.15)<1E-9)";

test.each([
  ["a weighing", mass(""), `IF(${number},(B2<=0)+(B2>1E15),1)`],
  ["an optional weighing", optional(mass("")), `IF(${number},(B2<0)+(B2>1E15),(TRIM(B2)<>""))`],
  ["a vessel", vesselMass(""), `IF(${number},(B2<=0)+(B2>1E15),(TRIM(B2)<>"tared"))`],
  ["a vessel of a series", omittable(vesselMass("")), `IF(${number},(B2<=0)+(B2>1E15),(TRIM(B2)<>"")*(TRIM(B2)<>"tared"))`],
  ["a fraction", fraction(""), `IF(${number},(B2<0)+(B2>1),1)`],
  ["an ash content", ashShare(""), `IF(${number},(B2<=0)+(B2>=1),(TRIM(B2)<>"none"))`],
  ["a loss, either side of zero", massLost(""), `IF(${number},(B2>1E9)+(B2<(-1000000000))+(B2=0),1)`],
  ["a temperature", roomTemperature(""), `IF(${number},(B2>100)+(B2<(-70)),1)`],
  ["oxygen in air", oxygenInAir(""), `IF(${number},(B2<0.05)+(B2>=0.2)*(B2<0.22)+(B2>1),1)`],
  ["an optional density", optional(airDensityInput("")), `IF(${number},(B2<0.4)*(B2<>0)+(B2>1.7),(TRIM(B2)<>""))`],
  ["a least time", optional(leastMinutes("")), `IF(${number},(B2<0)+(B2>0)*(B2<1)+(B2>1E15),(TRIM(B2)<>""))`],
  ["a word", choice("", ["wet", "dry"]), 'IF(ISTEXT(B2),(TRIM(B2)<>"wet")*(TRIM(B2)<>"dry"),1)'],
  [
    "an optional word of two parts",
    optional(choice("", ["of last"])),
    `IF(ISTEXT(B2),(TRIM(B2)<>"")*(1-(TRIM(B2)="of last")*ISNUMBER(SEARCH("of last",B2))),IF(${number},B2<>0,ISLOGICAL(B2)+ISERROR(B2)))`,
  ],
  ["an optional truth", optional(truth("")), `IF(ISLOGICAL(B2),0,IF(${number},B2<>0,TRIM(B2)<>""))`],
  ["anything", asGiven(""), ""],
  ["a chemical formula, which no cell formula can look at", formulaText(""), undefined],
  ["a furnace temperature", furnaceTemperature(""), `IF(${number},(B2>1800)+(B2<(-70))+${kelvin},1)`],
  ["a temperature of heating, to be above 0", heatedTemperature(""), `IF(${number},(B2<=0)+(B2>1800)+${kelvin},1)`],
  ["a thermometer's reading", thermometerReading(""), `IF(${number},(B2>1800)+(B2<(-70)),1)`],
  ["air changes, or the word closed", airChangesPerHour(""), `IF(${number},(B2<0)+(B2>600),(TRIM(B2)<>"closed"))`],
])("refusedInCells of %s", (_what, input, condition) => {
  expect(refusedInCells(input, "B2")).toBe(condition);
});

test("a number in the formula itself is not asked whether it is a truth, which some spreadsheets say of it", () => {
  expect(refusedInCells(mass(""), "(B2-C2)")).toBe("IF(ISNUMBER((B2-C2)),((B2-C2)<=0)+((B2-C2)>1E15),1)");
});
