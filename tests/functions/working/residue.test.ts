import { functionNamed, inCellsOf, workingOf } from "../call";

test("VOLATILEMATTER works out the loss, takes the moisture off, and divides by the dry part where asked", () => {
  const read = { vessel: 20, before: 21, after: 20.2, moisture: 0.05 };
  const lines = ["loss on heating = (21 - 20.2) / (21 - 20) = 0.8", "volatile matter, as analysed = 0.8 - 0.05 = 0.75"];
  expect(workingOf("VOLATILEMATTER", read)).toEqual(lines);
  expect(workingOf("VOLATILEMATTER", { ...read, basis: "dry" })).toEqual([...lines, "volatile matter, dry = 0.75 / (1 - 0.05) = 0.7894737"]);
});

test("ASHFRACTION speaks of the dry basis only when there was moisture", () => {
  const read = { vessel: 25, before: 27, ash: 25.024 };
  const lines = ["ash = 25.024 - 25 = 0.024 g", "ash, as weighed = 0.024 / (27 - 25) = 0.012"];
  expect(workingOf("ASHFRACTION", read)).toEqual(lines);
  expect(workingOf("ASHFRACTION", { ...read, moisture: 0 })).toEqual(lines);
  expect(workingOf("ASHFRACTION", { ...read, moisture: 0.08 })).toEqual([...lines, "ash, dry = 0.012 / (1 - 0.08) = 0.01304348"]);
});

test("FIXEDCARBON subtracts the sum", () => {
  expect(workingOf("FIXEDCARBON", { moisture: 0.05, volatile: 0.75, ash: 0.01 })).toEqual([
    "moisture + volatile matter + ash = 0.05 + 0.75 + 0.01 = 0.81",
    "fixed carbon = 1 - 0.81 = 0.19",
  ]);
});

test("LOSSONIGNITION divides by the dry sample", () => {
  expect(workingOf("LOSSONIGNITION", { vessel: 30, before: 35, after: 34.7 })).toEqual([
    "loss = 35 - 34.7 = 0.3 g",
    "dry sample = 35 - 30 = 5 g",
    "loss on ignition = 0.3 / 5 = 0.06",
  ]);
});

test("PROXIMATE works every share out and says that the sum proves nothing", () => {
  expect(workingOf("PROXIMATE", { vessel: 20, moist: 21, dry: 20.9, char: 20.3, ash: 20.05 })).toEqual([
    "sample as received = 21 - 20 = 1 g",
    "moisture = (21 - 20.9) / 1 = 0.1",
    "volatile matter = (20.9 - 20.3) / 1 = 0.6",
    "fixed carbon = (20.3 - 20.05) / 1 = 0.25",
    "ash = (20.05 - 20) / 1 = 0.05",
    "dry: each over 20.9 - 20 = 0.9 g instead",
    "the sum is 1 whatever was weighed, so it does not prove the weighings",
  ]);
});

test("BASIS.CONVERT goes through the dry sample, with the hydrogen of the moisture where it counts", () => {
  expect(workingOf("BASIS.CONVERT", { value: 0.45, from: "as received", to: "dry", moistureReceived: 0.1 })).toEqual([
    "dry sample in 1 g as received = 0.9 g; to 1 g dry belong 1 g",
    "dry = 0.45 / 0.9 x 1 = 0.5",
  ]);
  expect(workingOf("BASIS.CONVERT", { value: 0.06, from: "as analysed", to: "dry", moistureAnalysis: 0.08, quantity: "hydrogen" })).toEqual([
    "dry sample in 1 g as analysed = 0.92 g; to 1 g dry belong 1 g",
    "hydrogen in water = 0.1119067 per gram; in the moisture 0.00895254, then 0",
    "dry = (0.06 - 0.00895254) / 0.92 x 1 = 0.05548637",
  ]);
  expect(workingOf("BASIS.CONVERT", { value: 0.5, from: "dry", to: "as received", moistureReceived: 0.1, quantity: "oxygen" })?.at(-1)).toBe(
    "as received = 0.5 / 1 x 0.9 + 0.08880933 = 0.5388093",
  );
  expect(workingOf("BASIS.CONVERT", { value: 0.5, from: "dry", to: "dry" })).toEqual(["dry = 0.5, as given"]);
});

test("ZERODRIFT says where the weighing stands between the zeros", () => {
  const read = { reading: 31.5, zeroBefore: 0.002, zeroAfter: 0.006 };
  expect(workingOf("ZERODRIFT", read)).toEqual([
    "no times: midway between the zeros, 0.5",
    "zero then = 0.002 + (0.006 - 0.002) x 0.5 = 0.004 g",
    "reading - zero = 31.5 - 0.004 = 31.496 g",
  ]);
  expect(workingOf("ZERODRIFT", { ...read, timeBefore: 0, time: 2, timeAfter: 5 })?.[0]).toBe("share of the span between the zeros = 0.4");
});

test("BLANKCORRECTED puts a gain in brackets", () => {
  expect(workingOf("BLANKCORRECTED", { loss: 0.85, blankLoss: 0.004 })).toEqual(["loss of the sample = 0.85 - 0.004 = 0.846 g"]);
  expect(workingOf("BLANKCORRECTED", { loss: 0.85, blankLoss: -0.004 })).toEqual(["loss of the sample = 0.85 - (-0.004) = 0.854 g"]);
});

test("AIRDENSITY shows vapour and compressibility, or the simplified formula", () => {
  expect(workingOf("AIRDENSITY", { temperature: 20, pressure: 101_325, humidity: 0.5 })).toEqual([
    "mole fraction of water vapour = 0.01158934",
    "compressibility Z = 0.9996148",
    "p M / (Z R T) x (1 - 0.378 x vapour): air density = 1.199314 kg/m³",
  ]);
  expect(workingOf("AIRDENSITY", { temperature: 20, pressure: 101_325, humidity: 0.5, formula: "OIML" })).toEqual([
    "(0.34848 p - 0.009 h exp(0.061 t)) / (273.15 + t), p in hPa, h in percent",
    "air density = 1.199294 kg/m³",
  ]);
});

test("BUOYANCY shows factor and correction", () => {
  expect(workingOf("BUOYANCY", { reading: 2, density: 2700 })).toEqual([
    "mass = 2 x (1 - 1.2 / 8000) / (1 - 1.2 / 2700) = 2.000589 g",
    "correction = 0.0005891507 g; within one material it cancels in a loss fraction",
  ]);
});

test("HOTWEIGHING says that it is no correction", () => {
  expect(workingOf("HOTWEIGHING", { temperatureDifference: 30 })).toEqual([
    "error to fear = 30 x 0.00019 = 0.0057 g, too light",
    "it fades over about half an hour; no correction, since shape, draught and time all count",
  ]);
});

test("TYPICALRANGE shows what else is printed of the quantity", () => {
  expect(workingOf("TYPICALRANGE", { quantity: "moisture", value: 0.4 })).toEqual([
    "inside: moisture of 0.4, wet basis, lies in the 0 to 0.7 of untreated plant matter (common practice, no source).",
    "bands of moisture: plant matter 0 to 0.7; wood 0.36 to 0.58",
  ]);
});

const basis = { moistureReceived: "", moistureAnalysis: "", ash: "", quantity: "" };
test.each([
  ["VOLATILEMATTER", { vessel: "B2", before: "C2", after: "D2", moisture: "E2", basis: "" }, "(C2-D2)/(C2-IF(ISNUMBER(B2),B2,0))-E2"],
  ["VOLATILEMATTER", { vessel: "25", before: "C2", after: "D2", moisture: "E2", basis: '" Dry"' }, "((C2-D2)/(C2-25)-E2)/(1-E2)"],
  ["ASHFRACTION", { vessel: "25", before: "C2", ash: "D2", moisture: "" }, "(D2-25)/(C2-25)"],
  ["FIXEDCARBON", { moisture: "B2", volatile: "C2", ash: "D2" }, '1-(B2+C2+IF(TRIM(D2)="none",0,IF(D2>0,D2,NA())))'],
  ["LOSSONIGNITION", { vessel: '"tared"', before: "C2", after: "D2" }, "(C2-D2)/(C2-0)"],
  ["BASIS.CONVERT", { ...basis, value: "B2", from: '"as received"', to: '"dry"', moistureReceived: "C2" }, "B2/(1-IF(C2>0,C2,NA()))*1"],
  ["BASIS.CONVERT", { ...basis, value: "B2", from: '"dry"', to: '"ash-free"', ash: "C2" }, 'B2/1*(1/(1-IF(TRIM(C2)="none",0,IF(C2>0,C2,NA()))))'],
  ["BASIS.CONVERT", { ...basis, value: "B2", from: '"as received"', to: '"dry"' }, "B2/(1-NA())*1"],
  ["BASIS.CONVERT", { ...basis, value: "B2", from: '"dry"', to: '"as analysed"', moistureAnalysis: "0.08" }, "B2/1*(1-0.08)"],
  ["ZERODRIFT", { reading: "B2", zeroBefore: "C2", zeroAfter: "D2", timeBefore: "", time: "", timeAfter: "" }, "B2-(C2+(D2-C2)*0.5)"],
  ["BLANKCORRECTED", { loss: "B2", blankLoss: "-0.002" }, "B2-(-0.002)"],
  ["AIRDENSITY", { temperature: "B2", pressure: "C2", humidity: "D2", formula: '"OIML"' }, "(0.34848*C2/100-0.009*100*D2*EXP(0.061*B2))/(273.15+B2)"],
  ["BUOYANCY", { reading: "B2", density: "C2", airDensity: "", referenceDensity: "" }, "B2*(1-1.2/8000)/(1-1.2/C2)"],
  ["HOTWEIGHING", { temperatureDifference: "B2", rate: "" }, "B2*0.00019"],
])("%s of %j is %s in plain cells", (name, text, plain) => {
  expect(inCellsOf(name, text as unknown as Record<string, string>)).toBe(plain);
});

test.each(["PROXIMATE", "TYPICALRANGE"])("%s has no plain-cell form, so a shared sheet gets its values", (name) => {
  expect(functionNamed(name).inCells).toBeUndefined();
});
