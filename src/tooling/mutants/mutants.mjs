// Changes the sources in small ways, one at a time, and says which changes no test notices.
import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import sources from "./chosenFiles.js";
import { everyMutant, switchedSources } from "./mutations.mjs";
import { Pool } from "./pool.mjs";
import { report } from "./report.mjs";
import sample from "./sample.js";

const ROOT = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "../../..");
// Browser tests take too long for this, and tests of built files never see a mutant.
const LEFT_OUT = ["/tests/browser/", "/tests/manifest.test.ts", "/tests/functions/builtFunctions.test.ts"];

const DEFAULTS = { sample: "24", seed: "1", patience: "90" };
/** A test file may take this many times what it takes without a mutant, and these milliseconds more. */
const SLOWER = 5;
const MORE_MS = 30_000;
/** Long enough for any one test on a busy machine, so that slowness is never taken for a kill. */
const TEST_MS = 120_000;
/** A mutant may be run through this many times as often as its place is without it. */
const MORE_HITS = 100;

const options = {
  room: { type: "string", multiple: true },
  files: { type: "string", multiple: true },
  sample: { type: "string", default: DEFAULTS.sample },
  seed: { type: "string", default: DEFAULTS.seed },
  patience: { type: "string", default: DEFAULTS.patience },
  help: { type: "boolean" },
};

const HELP = `npm run mutants: changes the sources in small ways, one at a time, and lists the changes that no test notices.

  --room <name>       looks at this room alone, such as drying; may be repeated. Every room where left out.
  --files <paths>     looks at these sources alone
  --sample <number>   changes a room gets at most; ${DEFAULTS.sample} where left out
  --seed <number>     which changes are drawn; the same seed draws the same. ${DEFAULTS.seed} where left out
  --patience <number> seconds of tests that one change may take; ${DEFAULTS.patience} where left out
  --help              shows this

  npm run mutants -- --room drying --sample 60 --seed 7
  npm run mutants -- --files src/drying/moisture.ts src/drying/weighingSeries.ts`;

function wholeNumber(name, text) {
  if (!/^\d+$/.test(text)) throw new Error(`--${name}: "${text}" is not a whole number. Give one such as ${DEFAULTS[name]}.`);
  return Number(text);
}

/** Every source of the product, from the root. */
const everySource = () =>
  readdirSync(path.join(ROOT, "src"), { recursive: true, encoding: "utf8" })
    .map((file) => `src/${file.replaceAll("\\", "/")}`)
    .filter((file) => file.endsWith(".ts"))
    .sort();

function jestConfig(folder) {
  const { jest } = JSON.parse(readFileSync(path.join(ROOT, "package.json"), "utf8"));
  const here = (file) => path.join(ROOT, "src/tooling/mutants", file);
  const transform = { ...jest.transform, "^.+\\.ts$": [here("switchedTransform.js"), { folder }] };
  return { ...jest, rootDir: ROOT, transform, testEnvironment: here("SwitchedEnvironment.js"), testTimeout: TEST_MS };
}

/** These test files once, without a mutant: how long it takes, and how often it runs through each mutant's place, on loading and in its tests. */
async function dryRun(pool, files) {
  const seen = new Map();
  await pool.each(files, async (run, file) => {
    const outcomes = await run({ files: [file] }, () => 600_000);
    const [{ ms, cpuMs, problem, coverage }] = outcomes;
    if (problem !== undefined) throw new Error(`${path.relative(ROOT, file)} fails without any mutant.\n${problem}`);
    seen.set(file, { ms, cpuMs, loading: coverage.static, testing: coverage.perTest.tests ?? {} });
  });
  return seen;
}

/** The test files that run a mutant: those whose tests do before those that only load it, its own room's first, the quick ones first. */
function testsOf({ id, file }, seen) {
  const room = sample.roomOf(file);
  const isNear = (test) => path.relative(ROOT, test).replaceAll("\\", "/").startsWith(`tests/${room}/`);
  const hits = ([, { loading, testing }]) => (loading[id] ?? 0) + (testing[id] ?? 0);
  const rank = ([test, { testing, cpuMs }]) => [testing[id] ? 0 : 1, isNear(test) ? 0 : 1, cpuMs];
  return [...seen]
    .filter((entry) => hits(entry) > 0)
    .map((entry) => ({ test: entry[0], cpuMs: entry[1].cpuMs, hits: hits(entry), rank: rank(entry) }))
    .sort((a, b) => a.rank[0] - b.rank[0] || a.rank[1] - b.rank[1] || a.rank[2] - b.rank[2]);
}

/** Those of the tests, in order, that fit into what is left of the patience; the very first is always run. */
function withinPatience(tests, { ran, cpuMs }, seconds) {
  let ms = cpuMs;
  return tests.filter((test, index) => (ms += test.cpuMs) <= seconds * 1000 || (index === 0 && ran === 0));
}

/**
 * Runs the tests that a mutant has not been through yet, until one notices it. Before the last stage only those whose own tests
 * run it, or where none does, those that run it on loading.
 * @param tried what earlier stages did: `files` run through or left out, how many `ran`, and for how long
 */
async function fate(run, { mutant, tried }, { seen, isLast, patience }) {
  const all = testsOf(mutant, seen);
  if (isLast && all.length === 0) return { ...mutant, state: "survived", note: "no test runs it" };
  const now = all.filter(({ test, rank }) => !tried.files.has(test) && (isLast || rank[0] === all[0].rank[0]));
  const tests = withinPatience(now, tried, patience);
  if (tests.length > 0) {
    const hitLimit = Math.max(...tests.map(({ hits }) => hits)) * MORE_HITS;
    const outcomes = await run({ active: mutant.id, hitLimit, files: tests.map(({ test }) => test) }, (test) => seen.get(test).ms * SLOWER + MORE_MS);
    const last = outcomes?.at(-1);
    if (last === undefined || last.endless) return { ...mutant, state: "timed out" };
    if (last.problem !== undefined) return { ...mutant, state: "killed", by: path.relative(ROOT, last.file) };
  }
  for (const { test } of now) tried.files.add(test);
  tried.ran += tests.length;
  tried.cpuMs += tests.reduce((sum, { cpuMs }) => sum + cpuMs, 0);
  if (!isLast) return undefined;
  const note =
    tried.ran < all.length ? `after ${tried.ran} of the ${all.length} test files that run it` : `after all ${all.length} test files that run it`;
  return { ...mutant, state: "survived", note };
}

/** Stage by stage, the nearest tests first: tests that no mutant is left for are never run. */
async function fatesOf(mutants, { pool, stages, patience }) {
  const seen = new Map();
  const fates = [];
  let left = mutants.map((mutant) => ({ mutant, tried: { files: new Set(), ran: 0, cpuMs: 0 } }));
  for (const [index, tests] of stages.entries()) {
    if (left.length === 0) break;
    console.error(`${left.length} mutants left; running ${tests.length} test files without any of them first.`);
    for (const [test, found] of await dryRun(pool, tests)) seen.set(test, found);
    const survivors = [];
    await pool.each(left, async (run, one) => {
      const found = await fate(run, one, { seen, isLast: index === stages.length - 1, patience });
      if (found === undefined) survivors.push(one);
      else if (fates.push(found) % 20 === 0) console.error(`${fates.length} of ${mutants.length}`);
    });
    left = survivors;
  }
  return fates;
}

async function main() {
  const { values, positionals } = parseArgs({ options, allowPositionals: true });
  if (values.help) return console.log(HELP);
  const [size, seed, patience] = ["sample", "seed", "patience"].map((name) => wholeNumber(name, values[name]));
  const files = [...(values.files ?? []), ...positionals].map((file) => path.relative(ROOT, path.resolve(file)));
  const chosen = sources.chosenFiles(everySource(), { room: values.room, files: files.length > 0 ? files : undefined });
  const mutants = await everyMutant(ROOT, chosen);
  const sampled = sample.sampleByRoom(mutants, { seed, size });
  const folder = mkdtempSync(path.join(tmpdir(), "retort-mutants-"));
  const switched = await switchedSources(ROOT, sampled);
  for (const { file, text } of switched.files) {
    mkdirSync(path.dirname(path.join(folder, file)), { recursive: true });
    writeFileSync(path.join(folder, file), text);
  }
  const pool = new Pool(jestConfig(folder));
  try {
    const canReach = sources.relatedTests(ROOT, chosen);
    const tests = canReach.filter((file) => !LEFT_OUT.some((part) => file.replaceAll("\\", "/").includes(part)));
    console.error(`${sampled.length} of ${mutants.length} mutants.`);
    const stages = sources.stagesOf(ROOT, tests, chosen);
    const fates = await fatesOf(switched.mutants, { pool, stages, patience });
    console.log(report(mutants, fates, { size, seed, patience }));
  } finally {
    pool.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

main().catch((problem) => {
  console.error(problem.message);
  process.exitCode = 1;
});
