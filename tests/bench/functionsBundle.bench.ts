import { readFileSync } from "node:fs";
import path from "node:path";
import { performance } from "node:perf_hooks";
import vm from "node:vm";
import { gzipSync } from "node:zlib";
import { everyFunction } from "../../src/functions/catalogue";
import { es2016Realm } from "../functions/es2016/es2016Realm";
import { inTurn, printed } from "./inTurn";

// Size of the built functions.js and the time to evaluate it cold, in a fresh context each time, against parsing it only: as a host of
// today does, whose own built-ins stand, and as one of ECMAScript 2016 does, where the polyfills take their place. The three take turns.
const BUNDLE = path.join(__dirname, "../../dist/addin/functions.js");
const ROUNDS = 31;
const WARM_UP_ROUNDS = 3;
const KILO = 1000;

const source = readFileSync(BUNDLE, "utf8");
console.log(
  `functions.js: ${(source.length / KILO).toFixed(1)} kB, ${(gzipSync(source).length / KILO).toFixed(1)} kB gzipped; tests/functions/builtFunctions.test.ts holds its bound`,
);

let registered = 0;
const HOST = { CustomFunctions: { associate: () => void registered++, Error: class {} } };

// A changed comment defeats the engine's code cache, so every round compiles anew.
let round = 0;
const fresh = (): string => `${source}\n//${round++}`;

function timed(run: () => void): number {
  const start = performance.now();
  run();
  return performance.now() - start;
}

/** Milliseconds to evaluate the file in a realm made beforehand. @throws Error where it registers anything but every function once */
function evaluatedIn(realm: vm.Context): number {
  registered = 0;
  const took = timed(() => void new vm.Script(fresh()).runInContext(realm));
  if (registered !== everyFunction.length) throw new Error(`${registered} of ${everyFunction.length} functions registered`);
  return took;
}

const PARSED = "parsing alone";

async function main(): Promise<void> {
  const took = await inTurn<number>(
    {
      [PARSED]: () => timed(() => void new vm.Script(fresh())),
      "cold evaluation": () => evaluatedIn(vm.createContext({ ...HOST })),
      "cold evaluation in a realm of ECMAScript 2016": () => evaluatedIn(es2016Realm(HOST).realm),
    },
    ROUNDS,
    WARM_UP_ROUNDS,
  );
  printed(took, PARSED);
}

void main();
