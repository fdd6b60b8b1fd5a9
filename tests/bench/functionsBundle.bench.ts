import { readFileSync } from "node:fs";
import path from "node:path";
import { performance } from "node:perf_hooks";
import vm from "node:vm";
import { gzipSync } from "node:zlib";

// Size of the built functions.js and the time to evaluate it cold, in a fresh context each time, against parsing it only.
const BUNDLE = path.join(__dirname, "../../dist/addin/functions.js");
const ROUNDS = 21;
const KILO = 1000;

const source = readFileSync(BUNDLE, "utf8");
console.log(`functions.js: ${(source.length / KILO).toFixed(1)} kB, ${(gzipSync(source).length / KILO).toFixed(1)} kB gzipped (aim: under 40)`);

const median = (times: number[]): number => times.sort((a, b) => a - b)[times.length >> 1] ?? NaN;

function timed(run: (context: vm.Context) => void): number {
  return median(
    Array.from({ length: ROUNDS }, () => {
      const context = vm.createContext({ CustomFunctions: { associate: () => undefined, Error: class {} } });
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
console.log(
  `cold evaluation: median ${evaluated.toFixed(2)} ms of ${ROUNDS}; ${(evaluated / parsed).toFixed(1)} times parsing alone (${parsed.toFixed(2)} ms)`,
);
