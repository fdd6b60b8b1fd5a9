import { parse, tokenize } from "@borgar/fx";
import {
  anyWhere,
  firstOf,
  lacksNumber,
  noNumber,
  notNumber,
  onceNumbers,
  orNothing,
  placeWhere,
  product,
} from "../../../src/runsheet/expressions/choices";
import {
  bracketed,
  cell,
  elsewhere,
  fixed,
  fn,
  is,
  joined,
  LEFT_OUT,
  range,
  reckon,
  retort,
  text,
  type Expression,
} from "../../../src/runsheet/expressions/Expression";
import { formulaText, nameBelow, nameOf, placeOf } from "../../../src/runsheet/expressions/formulaText";
import type { Plain } from "../../../src/explanation/runSheet/Plain";
import { workOut } from "../../../src/explanation/runSheet/workOut";

const [a, b, c] = [cell(1, 0), cell(1, 1), cell(1, 2)];

describe("formulaText(expression)", () => {
  it.each<[string, Expression]>([
    ["=A1", a],
    ["=$B$10", fixed(cell(10, 1))],
    // Excel's rule for references to other sheets: the name in apostrophes, those within it twice.
    ["='It''s (a) [b]'!$C$50", elsewhere("It's (a) [b]", cell(50, 2))],
    ["='A1'!$C$50=\"\"", is(elsewhere("A1", cell(50, 2)), "=", "")],
    ["=SUM('Kiln 2'!$B$3:$B$9)", fn("SUM", range(elsewhere("Kiln 2", cell(3, 1)), elsewhere("Kiln 2", cell(9, 1))))],
    ["=E$33:AA40", range(fixed(cell(33, 4), "row"), cell(40, 26))],
    ['="in ""order"""', 'in "order"'],
    ["=0.5", 0.5],
    ["=FIXED(A1,2,TRUE)", fn("FIXED", a, 2, true)],
    ['=RETORT.READING.U(A1,"","",TRUE)', retort("READING.U", a, LEFT_OUT, LEFT_OUT, true)],
    ["=A1-(B1+C1)/2", reckon(a, "-", reckon(reckon(b, "+", c), "/", 2))],
    ["=A1-(B1-C1)", reckon(a, "-", reckon(b, "-", c))],
    ["=A1-B1-C1", reckon(reckon(a, "-", b), "-", c)],
    ["=A1+B1-C1", reckon(a, "+", reckon(b, "-", c))],
    ["=A1/(B1*C1)", reckon(a, "/", reckon(b, "*", c))],
    ["=A1*B1/C1", reckon(a, "*", reckon(b, "/", c))],
    ["=(A1-B1)/(C1-B1)", reckon(reckon(a, "-", b), "/", reckon(c, "-", b))],
    ["=A1*(1+B1)^2", reckon(a, "*", reckon(reckon(1, "+", b), "^", 2))],
    ["=100*(SUM(A1,B1))", reckon(100, "*", bracketed(fn("SUM", a, b)))],
    ["=(A1-B1)*100<C1", is(reckon(reckon(a, "-", b), "*", 100), "<", c)],
    ['=A1&B1=""', is(joined(a, b), "=", "")],
    ["=(A1<1)=(B1<1)", is(is(a, "<", 1), "=", is(b, "<", 1))],
    ["=(A1=B1)=FALSE", is(is(a, "=", b), "=", false)],
    ["=(A1^B1)^C1", reckon(reckon(a, "^", b), "^", c)],
    ["=A1^(B1^C1)", reckon(a, "^", reckon(b, "^", c))],
    ['="row "&(A1+1)&" of "&B1', text`row ${reckon(a, "+", 1)} of ${b}`],
    ['="Sample 2: "&A1', joined("Sample 2", ": ", a)],
    ["=(A1&B1)+1", reckon(joined(a, b), "+", 1)],
    [
      '=IF(A1>B1,"one",IF(B1>C1,"two",C1))',
      firstOf(
        [
          [is(a, ">", b), "one"],
          [is(b, ">", c), "two"],
        ],
        c,
      ),
    ],
    ['=IF(COUNT(A1,B1)<2,"",A1*B1)', onceNumbers([a, b], reckon(a, "*", b))],
    ["=COUNT(A1,B1)=0", noNumber(a, b)],
    ["=COUNT(A1,B1,C1)<3", lacksNumber(a, b, c)],
    ['=IFERROR(LOG10(A1),"")', orNothing(fn("LOG10", a))],
    ["=SUMPRODUCT(ISNUMBER(A1)*(1-ISNUMBER(B1)))>0", anyWhere(product(fn("ISNUMBER", a), notNumber(b)))],
    ["=SUMPRODUCT(MATCH(1,(A1>2)*1,0))", placeWhere(is(a, ">", 2))],
    ['="B"&ROW(B1)', nameOf(b)],
    ['="B"&(ROW(B1)+A1)', nameBelow(b, a)],
  ])("writes %s", (formula, expression) => {
    expect(formulaText(expression)).toBe(formula);
  });

  // Against a parser of its own (@borgar/fx): what a spreadsheet reads is what was meant, for each operator within each other.
  const operators = ["=", "<", "<=", ">", ">=", "+", "-", "*", "/", "^"] as const;
  const read = (formula: string): unknown => {
    const shape = (part: ReturnType<typeof parse> | undefined): unknown => {
      if (part?.type === "BinaryExpression") return [shape(part.arguments[0]), part.operator, shape(part.arguments[1])];
      return part?.type === "ReferenceIdentifier" ? part.value : part;
    };
    return shape(parse(tokenize(formula)));
  };
  const pairs = operators.flatMap((outer) => operators.map((inner) => [outer, inner] as const));
  // a+(b-c) is (a+b)-c, and a*(b/c) is (a*b)/c.
  const isRegrouped = (outer: string, inner: string) => (outer === "+" && "+-".includes(inner)) || (outer === "*" && "*/".includes(inner));

  it.each(pairs)("keeps the order of a %s beside a %s", (outer, inner) => {
    const infix = (left: Expression, operator: (typeof operators)[number], right: Expression): Expression =>
      operator === "+" || operator === "-" || operator === "*" || operator === "/" || operator === "^"
        ? reckon(left, operator, right)
        : is(left, operator, right);
    expect(read(formulaText(infix(infix(a, inner, b), outer, c)))).toEqual([["A1", inner, "B1"], outer, "C1"]);
    const onTheRight = isRegrouped(outer, inner) ? [["A1", outer, "B1"], inner, "C1"] : ["A1", outer, ["B1", inner, "C1"]];
    expect(read(formulaText(infix(a, outer, infix(b, inner, c))))).toEqual(onTheRight);
  });

  it("gives the place of a cell or a range without the marks that fix it", () => {
    expect([placeOf(fixed(cell(10, 1))), placeOf(range(fixed(cell(33, 4), "row"), cell(40, 4)))]).toEqual(["B10", "E33:E40"]);
  });
});

describe("workOut(expression)", () => {
  const values: readonly Plain[] = [3, "words", null, "", 0.125];
  const at = (_row: number, column: number): Plain => values[column] ?? null;
  const [three, words, blank, empty, eighth] = [0, 1, 2, 3, 4].map((column) => cell(1, column)) as [typeof a, typeof a, typeof a, typeof a, typeof a];
  const row = range(cell(1, 0), cell(1, 4));

  it.each<[Plain, Expression]>([
    [2, fn("COUNT", row)],
    [4, fn("COUNTA", row)],
    [1, fn("COUNTIF", row, "words")],
    [1, fn("COUNTIFS", row, "w*", row, "<>x*")],
    [0, fn("COUNTIFS", row, "w*", row, "<>*s")],
    [3.125, fn("SUM", row)],
    [3, fn("MAX", row)],
    [0, fn("MAX", blank, empty)],
    [5, fn("MATCH", eighth, row, 0)],
    [0.13, fn("ROUND", eighth, 2)],
    [0.13, fn("ROUNDUP", 0.121, 2)],
    [2.4, fn("ROUNDUP", 2.3094, 1)],
    [-1, fn("INT", -0.5)],
    [1439, fn("MOD", -1, 1440)],
    ["170", fn("FIXED", 172, -1, true)],
    ["words and 3", text`${words} and ${three}`],
    [true, is(blank, "=", "")],
    [true, is(empty, "=", "")],
    [true, is(words, ">", three)],
    [true, is("Words", "=", words)],
    [2, fn("SUMPRODUCT", fn("ABS", reckon(fn("ISNUMBER", row), "-", 0)))],
    ["", orNothing(reckon(three, "/", 0))],
    ["", orNothing(reckon(words, "+", 1))],
    [2, fn("FIND", "o", words)],
    [5, fn("LEN", "D1,D2")],
    ["D1, D2, D3", fn("SUBSTITUTE", "D1,D2,D3", ",", ", ")],
    ["D1,D2|D3", fn("SUBSTITUTE", "D1,D2,D3", ",", "|", 2)],
    ["D1,D2", fn("SUBSTITUTE", "D1,D2", ",", "|", 2)],
    [2, fn("SUMPRODUCT", reckon(fn("ISNUMBER", row), "*", 1))],
    [1, placeWhere(is(row, "=", 3))],
    [4, fn("SUMPRODUCT", fn("MAX", reckon(is(row, "=", ""), "*", fn("COLUMN", row))))],
    [1, fn("ROW", three)],
    [5, fn("ROWS", range(cell(1, 0), cell(5, 0)))],
    [true, fn("ISBLANK", blank)],
    [false, fn("ISBLANK", empty)],
    [false, fn("ISFORMULA", three)],
    [1.5625, fn("MEDIAN", row)],
    [0.125, fn("SMALL", row, 1)],
    [3, fn("LARGE", row, 1)],
    // Student's t, 95 % two-sided, 2 degrees of freedom: 4.303 (any table)
    [4.303, fn("ROUND", fn("TINV", reckon(1, "/", 20), 2), 3)],
    [0, fn("N", words)],
    [3, fn("N", three)],
    ["D", fn("CHAR", 68)],
    ["9:07", text`${fn("HOUR", 0.38)}:${fn("RIGHT", text`0${fn("MINUTE", 0.38)}`, 2)}`],
    ["7:12", text`${fn("HOUR", 0.3)}:${fn("MINUTE", 0.3)}`],
    ["rds", fn("MID", words, 3, 9)],
    [1, fn("COUNTIF", row, "w*d?")],
    ["wo", fn("LEFT", words, 2)],
  ])("gives %j", (value, expression) => {
    expect(workOut(expression, at)).toEqual(value);
  });
});
