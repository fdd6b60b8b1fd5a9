"use strict";
// The test environment of a mutation run: switches the mutant on, notes which mutants a file runs, and stops it at the first failure.
const { TestEnvironment } = require("jest-environment-node");
const run = require("./currentRun");

const FAILURES = new Set(["test_fn_failure", "hook_failure", "error"]);

class SwitchedEnvironment extends TestEnvironment {
  constructor(config, context) {
    super(config, context);
    this.failed = false;
    // The name and shape that the instrumenter's switches read.
    this.global.__stryker__ = { activeMutant: run.active, hitCount: 0, hitLimit: run.hitLimit };
  }

  handleTestEvent({ name, test }) {
    if (name === "run_start") this.global.__stryker__.currentTestId = "tests";
    if (FAILURES.has(name)) this.failed = true;
    if (name === "test_start" && this.failed) test.mode = "skip";
  }

  async teardown() {
    // Copied, for this realm is about to go.
    run.coverage = JSON.parse(JSON.stringify(this.global.__stryker__.mutantCoverage ?? { static: {}, perTest: {} }));
    await super.teardown();
  }
}

module.exports = SwitchedEnvironment;
