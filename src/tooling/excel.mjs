// npm run excel [-- stop]: builds, serves and sideloads the add-in into Excel, and takes it out again. Windows and macOS only.
import { spawnSync } from "node:child_process";
import { homedir, platform } from "node:os";
import cli from "office-addin-cli";
import { sideload } from "./sideload.js";

process.exitCode = sideload({
  platform: platform(),
  home: homedir(),
  words: process.argv.slice(2),
  npx: (args) => spawnSync("npx", args, { stdio: "inherit", shell: true }).status ?? 1,
  say: (text) => console.log(`\n${text}`),
  refuse: (text) => cli.logErrorMessage(text),
});
