import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { brokenPromises, presentMetadata, presentPromises, promisedBy, type Released } from "./promises";

// Run by hand: npm run record
// Writes down what the version in package.json publishes, and what all versions together promise. Entries of other versions are never touched.
const FILE = path.join(__dirname, "released.json");
const CONTRACT = path.join(__dirname, "../contract.json");
const read = (file: string): unknown => JSON.parse(readFileSync(file, "utf8"));

const { version } = read(path.join(__dirname, "../../../package.json")) as { version: string };
const earlier = Object.fromEntries(Object.entries(read(FILE) as Record<string, Released>).filter(([name]) => name !== version));
const promised = promisedBy(Object.values(earlier));
const broken = brokenPromises(promised, presentPromises);
if (broken.length > 0) throw new Error(`saved workbooks rely on these: ${broken.join("; ")}`);
const promises = Object.fromEntries(Object.entries(presentPromises).filter(([id, line]) => promised[id] !== line));
const written = (file: string, content: object): void => writeFileSync(file, `${JSON.stringify(content, null, 2)}\n`);
written(FILE, { ...earlier, [version]: { functionsJson: presentMetadata(), promises } });
written(CONTRACT, { ...promised, ...promises });
