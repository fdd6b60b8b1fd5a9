"use strict";
// A process that keeps jest warm and runs test files, one job at a time, with a mutant switched on. Started by pool.mjs.
const { readConfig } = require("jest-config");
const { default: Runner } = require("jest-runner");
const { default: Runtime } = require("jest-runtime");
const run = require("./currentRun");

// Jest leaves memory behind with every test file; above this the pool starts a fresh process.
const WORN_OUT_BYTES = 1.5e9;
const HIT_LIMIT_REACHED = "Stryker: Hit count limit reached";

const config = JSON.parse(process.argv[2]);

const prepared = (async () => {
  const { globalConfig, projectConfig } = await readConfig({ _: [], $0: "", config: JSON.stringify(config) }, config.rootDir);
  const context = await Runtime.createContext(projectConfig, { console, maxWorkers: 1, watch: false, watchman: false });
  return { globalConfig, context };
})();

/** Runs the files in order and stops after the first that fails. */
async function runFiles({ active, hitLimit, files }) {
  const { globalConfig, context } = await prepared;
  Object.assign(run, { active, hitLimit });
  const outcomes = [];
  let failed = false;
  let before = process.cpuUsage();
  const runner = new Runner(globalConfig, {});
  const note = (file, ms, problem) => {
    if (failed) return;
    failed = problem !== undefined;
    const { user, system } = process.cpuUsage(before);
    outcomes.push({
      file,
      ms,
      cpuMs: (user + system) / 1000,
      problem,
      endless: problem?.includes(HIT_LIMIT_REACHED) ?? false,
      coverage: run.coverage,
    });
  };
  runner.on("test-file-start", ([test]) => {
    before = process.cpuUsage();
    process.send({ started: test.path });
  });
  runner.on("test-file-success", ([test, { perfStats, failureMessage, numFailingTests, testExecError }]) =>
    note(test.path, perfStats.end - perfStats.start, numFailingTests > 0 || testExecError ? String(failureMessage) : undefined),
  );
  runner.on("test-file-failure", ([test, problem]) => note(test.path, 0, String(problem?.stack ?? problem)));
  const watcher = { isInterrupted: () => failed, isWatchMode: () => false };
  await runner.runTests(
    files.map((path) => ({ path, context })),
    watcher,
    { serial: true },
  );
  return outcomes;
}

process.on("message", (job) => {
  runFiles(job).then(
    (outcomes) => process.send({ outcomes, wornOut: process.memoryUsage.rss() > WORN_OUT_BYTES }),
    (problem) => process.send({ problem: String(problem.stack) }),
  );
});
prepared.then(() => process.send({ ready: true }));
