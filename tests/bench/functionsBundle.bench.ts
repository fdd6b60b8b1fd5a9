import { readFileSync } from "node:fs";
import path from "node:path";
import { performance } from "node:perf_hooks";
import vm from "node:vm";
import { gzipSync } from "node:zlib";
import { es2016Realm } from "../functions/es2016/es2016Realm";

// Size of the built functions.js and the time to evaluate it cold, in a fresh context each time, against parsing it only: as a host of
// today does, whose own built-ins stand, and as one of ECMAScript 2016 does, where the polyfills take their place.
const BUNDLE = path.join(__dirname, "../../dist/addin/functions.js");
const ROUNDS = 21;
const KILO = 1000;

const source = readFileSync(BUNDLE, "utf8");
console.log(
  `functions.js: ${(source.length / KILO).toFixed(1)} kB, ${(gzipSync(source).length / KILO).toFixed(1)} kB gzipped (aim: under 42; bound in the tests: 46)`,
);

const median = (times: number[]): number => times.sort((a, b) => a - b)[times.length >> 1] ?? NaN;

const HOST = { CustomFunctions: { associate: () => undefined, Error: class {} } };

function timed(run: (context: vm.Context) => void, contextOf: () => vm.Context = () => vm.createContext({ ...HOST })): number {
  return median(
    Array.from({ length: ROUNDS }, () => {
      const context = contextOf();
      const start = performance.now();
      run(context);
      return performance.now() - start;
    }),
  );
}

// A changed comment defeats the engine's code cache, so every round compiles anew.
let round = 0;
const fresh = (): string => `${source}\n//${round++}`;
const parsed = timed(() => void new vm.Script(fresh()));
const evaluated = timed((context) => new vm.Script(fresh()).runInContext(context));
const older = timed(
  (context) => new vm.Script(fresh()).runInContext(context),
  () => es2016Realm(HOST).realm,
);
console.log(
  `cold evaluation: median ${evaluated.toFixed(2)} ms of ${ROUNDS}; ${(evaluated / parsed).toFixed(1)} times parsing alone (${parsed.toFixed(2)} ms); in a realm of ECMAScript 2016 ${older.toFixed(2)} ms`,
);
