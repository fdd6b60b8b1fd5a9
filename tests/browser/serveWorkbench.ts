import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import path from "node:path";

const ROOT = path.join(__dirname, "../..");
const STARTS_WITHIN_MS = 10_000;

export interface ServedWorkbench {
  /** "http://127.0.0.1:4173/" */
  readonly address: string;
  close(): void;
}

/** The built local workbook, served by the same script that npm start uses. */
export function serveWorkbench(): Promise<ServedWorkbench> {
  if (!existsSync(path.join(ROOT, "dist/workbench/index.html"))) throw new Error("The local workbook is not built. Run npm run build first.");
  const environment = { ...process.env, DISPLAY: "", WAYLAND_DISPLAY: "" };
  const server = spawn(process.execPath, ["src/tooling/serve.mjs"], { cwd: ROOT, env: environment, stdio: ["ignore", "pipe", "pipe"] });
  return new Promise((resolve, reject) => {
    let said = "";
    const late = setTimeout(() => reject(new Error(`the server did not start: ${said}`)), STARTS_WITHIN_MS);
    const hear = (text: Buffer): void => {
      said += text.toString();
      const [address] = /http:\/\/127\.0\.0\.1:\d+\//.exec(said) ?? [];
      if (address === undefined) return;
      clearTimeout(late);
      resolve({ address, close: () => void server.kill() });
    };
    server.stdout.on("data", hear);
    server.stderr.on("data", hear);
  });
}
