import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import path from "node:path";
import { CommandFolder } from "./inFolder";
import { bookOf } from "./longBook";

jest.setTimeout(60_000);

const ROOT = path.join(__dirname, "../..");
const { bin, version } = JSON.parse(readFileSync(path.join(ROOT, "package.json"), "utf8")) as { bin: { retort: string }; version: string };
const BUILT = path.join(ROOT, bin.retort);
const run = (...words: string[]) => spawnSync(process.execPath, [BUILT, ...words], { encoding: "utf8" });

test("the built program says its version, can be started by its name, and ends as promised", () => {
  expect(run("--version")).toMatchObject({ status: 0, stdout: `${version}\n`, stderr: "" });
  expect(readFileSync(BUILT, "utf8").startsWith("#!/usr/bin/env node\n")).toBe(true);
  expect(run("share", "none.xlsx", "--as", "values").status).toBe(1);
  expect(run("share").status).toBe(2);
});

test("the built program calculates with the built functions and shares what they give", async () => {
  const files = new CommandFolder();
  const sheet = '<sheetData><row r="1"><c r="A1"><f>_xldudf_RETORT_MOLARMASS("H2O")</f></c></row></sheetData>';
  const book = files.put("run.xlsx", await bookOf([["Tray", sheet]]));
  const { status, stdout } = run("record", book, "--recalculate", "--json");
  files.remove();
  expect(status).toBe(0);
  expect((JSON.parse(stdout) as { rows: { value: number }[] }[])[0]?.rows[0]?.value).toBeCloseTo(18.015, 3);
});
