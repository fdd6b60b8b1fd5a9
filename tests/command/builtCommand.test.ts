import { spawnSync } from "node:child_process";
import { closeSync, existsSync, openSync, readFileSync } from "node:fs";
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

// A device that takes nothing, as a full disk does.
const FULL = "/dev/full";
const isThere = existsSync(FULL);

(isThere ? test : test.skip).each([["record"], ["record", "--json"], ["--help"], ["share", "--help"]])(
  "an answer that is lost is said to be, and ends with 1: %p",
  async (...words) => {
    const files = new CommandFolder();
    const sheet = '<sheetData><row r="1"><c r="A1"><f>_xldudf_RETORT_MOLARMASS("H2O")</f><v>18.015</v></c></row></sheetData>';
    const book = files.put("run.xlsx", await bookOf([["Tray", sheet]]));
    const full = openSync(FULL, "w");
    const typed = words[0] === "record" ? ["record", book, ...words.slice(1)] : words;
    const { status, stderr } = spawnSync(process.execPath, [BUILT, ...typed], { encoding: "utf8", stdio: ["ignore", full, "pipe"] });
    closeSync(full);
    files.remove();
    expect({ status, stderr }).toEqual({
      status: 1,
      stderr: "retort: The answer could not be written to its end (ENOSPC), so what is there is not whole. Send it where there is room.\n",
    });
  },
);
