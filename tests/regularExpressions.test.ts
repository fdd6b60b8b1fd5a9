import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import ts from "typescript";

// The checker's own JavaScript: its native builds differ from machine to machine.
process.env["RECHECK_BACKEND"] = "pure";
import { checkSync } from "recheck";

const SRC = path.join(__dirname, "../src");

/** A regular expression of the sources, or the place of one that is put together when the module is loaded. */
interface Found {
  readonly file: string;
  readonly source: string;
  readonly flags: string;
}

const files = readdirSync(SRC, { recursive: true, encoding: "utf8" })
  .map((file) => file.replaceAll("\\", "/"))
  .filter((file) => /\.(ts|js|mjs)$/.test(file))
  .sort();

interface InFile {
  readonly literals: readonly Found[];
  /** How many are made with RegExp and not written as a literal. */
  readonly made: number;
}

function inFile(file: string, text: string): InFile {
  const literals: Found[] = [];
  let made = 0;
  const visit = (node: ts.Node): void => {
    if (ts.isRegularExpressionLiteral(node)) {
      const end = node.text.lastIndexOf("/");
      literals.push({ file, source: node.text.slice(1, end), flags: node.text.slice(end + 1) });
    }
    if ((ts.isNewExpression(node) || ts.isCallExpression(node)) && node.expression.getText() === "RegExp") made++;
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true));
  return { literals, made };
}

const all = new Map(files.map((file) => [file, inFile(file, readFileSync(path.join(SRC, file), "utf8"))]));

/** What a module makes with RegExp while it is loaded, and while `use` looks at it. */
function madeBy(file: string, use: (module: unknown) => void = () => undefined): Found[] {
  const found: Found[] = [];
  const original = globalThis.RegExp;
  const watched = new Proxy(original, {
    construct: (target, [source, flags]: [string | RegExp, string?]) => {
      found.push({ file, source: typeof source === "string" ? source : source.source, flags: flags ?? "" });
      return new target(source, flags);
    },
  });
  globalThis.RegExp = watched;
  try {
    jest.isolateModules(() => use(jest.requireActual(path.join(SRC, file))));
  } finally {
    globalThis.RegExp = original;
  }
  return found;
}

/** Modules that make one only when asked. */
const ASKED: Readonly<Record<string, (module: unknown) => void>> = {
  "explanation/saved/usesNameOfOurs.ts": (module) => {
    const { usesNameOfOurs } = module as { usesNameOfOurs: (names: readonly object[]) => unknown };
    usesNameOfOurs([
      { name: "dry.\\1", formula: "RETORT.AIRLEFT(1)" },
      { name: "größe", formula: "2*RETORT.AIRLEFT(1)" },
    ]);
  },
  "workbench/grid/engineStandIns.ts": (module) => {
    const { letters, punctuations, all: both } = module as Record<string, () => { toRegExp(): RegExp }>;
    for (const make of [letters, punctuations, both]) make?.().toRegExp();
  },
};

const literals = [...all.values()].flatMap((one) => one.literals);
const made = [...all].filter(([, one]) => one.made > 0).map(([file, one]) => ({ file, expected: one.made, found: madeBy(file, ASKED[file]) }));

/** The checker's verdict: "linear", or how the time grows with the text and a text that shows it. */
function growth({ source, flags }: Pick<Found, "source" | "flags">): string {
  // Patterns of our size are decided within a second; one that is not is too involved to be sure of.
  const { status, complexity, attack, error } = checkSync(source, flags, { timeout: 20_000 }) as ReturnType<typeof checkSync> & {
    readonly complexity?: { readonly type: string; readonly degree?: number };
    readonly attack?: { readonly pattern: string };
    readonly error?: { readonly kind: string };
  };
  if (status === "safe") return "linear";
  if (status === "unknown") return `not decided: ${error?.kind}`;
  return `${complexity?.type}${complexity?.degree === undefined ? "" : ` of degree ${complexity.degree}`} on ${attack?.pattern}`;
}

test("the sources have regular expressions to look at, and every one made with RegExp was seen being made", () => {
  expect(literals.length).toBeGreaterThan(70);
  expect(made.length).toBeGreaterThan(4);
  for (const { file, expected, found } of made) expect({ file, found: found.length >= expected }).toEqual({ file, found: true });
});

test("the checker finds exponential and polynomial time, and tells them from linear time", () => {
  expect(growth({ source: "^(a+)+$", flags: "" })).toMatch(/^exponential on /);
  expect(growth({ source: String.raw`\s+$`, flags: "" })).toMatch(/^polynomial of degree 2 on /);
  expect(growth({ source: String.raw`^\s*(\d+\.?\d*)$`, flags: "" })).toMatch(/^polynomial of degree 2 on /);
  expect(growth({ source: String.raw`^\s*\d+$`, flags: "" })).toBe("linear");
});

test("literals, new RegExp and RegExp are found wherever they stand", () => {
  const { literals: found, made: count } = inFile("a.ts", 'const a = /x+/gi; const f = () => [new RegExp("y"), RegExp("z"), "/no/"]; // /no/');
  expect([found.map(({ source, flags }) => [source, flags]), count]).toEqual([[["x+", "gi"]], 2]);
});

// A module that is loaded loads others, and what those make is theirs: each is kept once, under the first file.
const every = new Map([...literals, ...made.flatMap(({ found }) => found)].reverse().map((one) => [`${one.flags} ${one.source}`, one]));

test.each([...every.values()].reverse().map((found) => [found.file, found.source.slice(0, 60), found] as const))(
  "%s: /%s/ takes time in proportion to the text",
  (_file, _source, found) => {
    expect(growth(found)).toBe("linear");
  },
);
