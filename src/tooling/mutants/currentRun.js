"use strict";
// What the worker and its test environments, loaded by jest, tell each other: one object of this process.
module.exports = {
  /** @type {string | undefined} id of the mutant that is switched on */
  active: undefined,
  /** @type {number | undefined} more runs through the mutant than this in one test file are an endless loop */
  hitLimit: undefined,
  /** @type {{ static: Record<string, number>, perTest: Record<string, Record<string, number>> }} what the last test file ran */
  coverage: { static: {}, perTest: {} },
};
