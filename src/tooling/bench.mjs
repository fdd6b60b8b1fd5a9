// npm run bench: runs every benchmark under tests/bench in turn. Ratios within one run are what counts; absolute times vary with the machine.
import { spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";

for (const file of readdirSync("tests/bench").filter((name) => name.endsWith(".bench.ts"))) {
  console.log(`\n== ${file}`);
  const { status } = spawnSync(process.execPath, ["-r", "./src/tooling/typescriptHook.js", `tests/bench/${file}`], { stdio: "inherit" });
  if (status !== 0) process.exit(status ?? 1);
}
