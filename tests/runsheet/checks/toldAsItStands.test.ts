// Sentences that say no more than the weights do, and take notes as they are meant. The runs are invented: prunings and limestone.
import { plainRun, type PlainRun } from "../plainRun";

const seenAs = (...notes: readonly string[]): PlainRun => {
  const run = plainRun({ kind: "charring" });
  const { charring } = run.sheet;
  if (charring === undefined) throw new Error("no charring");
  run.vessel(40);
  run.weigh([70, 60.01, 60]);
  run.fire("charring", [46, 45.99]);
  for (const [index, note] of notes.entries()) run.type(charring.fire(charring.rows.fire.first + index).seen, note);
  return run;
};

describe("White edges on the char, as they are noted", () => {
  it.each([
    ["white edges"],
    ["White edge at the lid"],
    ["edges white"],
    ["Edges turned white"],
    ["white ash on the edges"],
    ["a little white on one edge"],
    ["white at the edge; yellow smoke"],
    ["no white edges at the top, white edges below"],
    ["white edges at the lid, no white edges below"],
  ])("%s: air got in", (note) => {
    expect(seenAs(note).check("air")[1]).toMatch(/^\? White edges seen, row \d+ or near it/);
  });

  it.each([
    ["no white edges"],
    ["edges not white"],
    ["without white edges"],
    ["no white at the edges"],
    ["edges: no white"],
    ["no edges white"],
    ["white smoke, black all over"],
    ["edges black, white smoke"],
    ["no white edges at the top, no white edges below"],
    [""],
  ])("%s: none", (note) => {
    expect(seenAs(note).check("air")[1]).toBe("");
  });

  it("in one firing, whatever is said of another", () => {
    expect(seenAs("no white edges", "edges white").check("air")[1]).toContain("White edges seen");
    expect(seenAs("no white edges", "no white edges").check("air")[1]).toBe("");
  });
});

test("at least so much left is what each of repeats lost, not their mean", () => {
  const run = plainRun({ kind: "charring", replicates: 2, samplesAre: "repeats" });
  run.type(run.sheet.settings.wanted, 0.1);
  for (const [sample, left] of [
    [1, 45.64],
    [2, 46],
  ] as const) {
    run.vessel(40, sample);
    run.weigh([70, 60.01, 60], sample);
    run.fire("charring", [left], sample);
  }
  // 1 - 5.64 / 20 and 1 - 6 / 20
  expect(run.head()[1]).toMatch(/At least 70\.0 % of the dry sample has left/);
});

test("of repeats of which one is in doubt, the sentence of what left at least says that it is counted", () => {
  const begun = (note: string, replicates = 2): string => {
    const run = plainRun({ kind: "charring", replicates, samplesAre: "repeats" });
    run.type(run.sheet.settings.wanted, 0.1);
    for (const sample of run.sheet.samples) {
      run.vessel(40, sample);
      run.weigh([70, 60.01, 60], sample);
      run.fire("charring", [sample === 1 ? 45.98 : 46], sample);
    }
    const { charring } = run.sheet;
    if (charring !== undefined) run.type(charring.fire(charring.rows.fire.first).seen, note);
    return String(run.head()[1]);
  };
  const sentence = "At least 70.0 % of the dry sample has left as vapour so far; charring is not shown finished.";
  expect(begun("white edges")).toBe(`? In doubt: ${sentence} All counted.`);
  expect(begun("black throughout")).toBe(sentence);
  // Of one sample the doubt is of all that is told.
  expect(begun("white edges", 1)).toBe(`? In doubt: ${sentence.replace("70.0", "70.1")}`);
});

test("what a part caught says of how many samples it is the sum", () => {
  const caughtOf = (replicates: number, weighed: number): string => {
    const run = plainRun({ kind: "liquids", replicates });
    const { caught } = run.sheet;
    if (caught === undefined) throw new Error("nothing caught");
    for (const sample of run.sheet.samples.slice(0, weighed)) {
      run.type(caught.before(2, sample), 50);
      run.type(caught.after(2, sample), 54.25 + sample);
    }
    return String(run.value(caught.says(caught.rows.first + 2)));
  };
  expect(caughtOf(1, 1)).toBe("caught 5.25 g");
  // 5.25 + 6.25, and 7.25 with them
  expect([caughtOf(3, 1), caughtOf(3, 2), caughtOf(3, 3)]).toEqual(["caught 5.25 g", "caught 11.50 g of 2 samples", "caught 18.75 g of 3 samples"]);
});

test("a loss where by the formulas nothing would leave is told so", () => {
  const run = plainRun({ kind: "salt", formula: "CaCO3", residue: "CaCO3" });
  const { salt } = run.sheet;
  if (salt === undefined) throw new Error("no salt");
  run.type(salt.water, "as weighed");
  run.vessel(20);
  run.weigh([25]);
  run.fire("heating", [22.9, 22.89]);
  expect(run.head()[1]).toBe("42.20 % ± 0.20 % (95 %) lost on heating, though by B11 and B12 nothing would leave. 1 sample.");
});

describe("A sample fed moist with its moisture typed", () => {
  const fed = (rounds: readonly number[]): PlainRun => {
    const run = plainRun({ kind: "liquids" });
    const { caught } = run.sheet;
    if (caught === undefined) throw new Error("nothing is caught");
    run.vessel(25);
    run.weigh(rounds);
    run.type(caught.box("fed", 1), 8);
    run.caught([[null, null], [null, null], [120.5, 131.5]]); // prettier-ignore
    run.fire("charring", [32.54, 32.53]);
    return run;
  };

  it("is asked about where drying took water off it before, since the moisture is taken off the latest weight", () => {
    const { caught } = fed([53.5]).sheet;
    const at = `C${caught?.box("fed", 1).row ?? 0}`;
    expect(fed([53.5]).check("ledger")).toEqual(["✓ in order", ""]);
    // Nothing that counts was lost: it is dry, and said so by the step before.
    expect(fed([53.5, 53.49]).check("ledger")[1]).toContain("says fed moist, and the sample was shown dry");
    expect(fed([53.5, 52.1]).check("ledger")).toEqual([
      "? doubt",
      `? ${at} is taken off C13, though it lost water while drying before. Clear ${at}, or dry on till steady.`,
    ]);
    expect(fed([53.5, 52.1]).head()[4]).toMatch(/^\? In doubt: /);
  });

  it("has its feed water told beside the 100 g dry, of which the parts are more", () => {
    const run = fed([53.5]);
    // 28.5 g with 8 %: dry 26.22 g, water 2.28 g, 8.7 of 100 g dry; 7.53 + 11 + 9.97 g make 28.5 g
    expect(run.head()[4]).toBe("Of 100 g dry and 8.7 g water fed: 28.7 g char, 42.0 g liquids, 38.0 g gas by difference, every leak with it.");
  });
});

test("once char that was not shown finished is ash, the next step says that it stays so, and not that the run is complete", () => {
  const next = (replicates: number, char: readonly number[], ash: readonly number[]): readonly unknown[] => {
    const run = plainRun({ kind: "ashing", replicates, samplesAre: "repeats" });
    for (const sample of run.sheet.samples) {
      run.vessel(40, sample);
      run.weigh([70.12, 60.01, 60], sample);
      run.fire("charring", char, sample);
      run.fire("ashing", ash, sample);
      if (run.sheet.end) run.type(run.sheet.end.vessel(sample), 40);
    }
    const [said, answer] = run.head();
    return [said, String(answer).replace("? In doubt: ", "").slice(0, 8), run.value(run.sheet.working.next)];
  };
  const stays = 'All weighed; charring was not shown finished, and the char is ash: "At least" stays';
  for (const replicates of [1, 3]) {
    expect(next(replicates, [46.2, 46], [40.41, 40.4])).toEqual([stays, "At least", 0]);
    expect(next(replicates, [46.01, 46], [40.41, 40.4])).toEqual(["Run complete: all weighings are in", "70.000 %", 0]);
  }
});
