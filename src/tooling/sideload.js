"use strict";
// What `npm run excel` does: puts the add-in that this computer serves into this computer's Excel, and takes it out again.
const path = require("node:path");

// Called by npx: as dependencies they bring a thousand packages and a native module that fails to install offline.
const DEBUGGING = "office-addin-debugging@7.0.0";
const CERTIFICATES = "office-addin-dev-certs@3.0.0";
const UNDO_CERTIFICATES = ["--yes", CERTIFICATES, "uninstall"];
const SERVER = ["--dev-server", '"npm run dev-server"', "--dev-server-port", "3000"];

const REGISTERED = {
  win32: () => "the registry key HKEY_CURRENT_USER\\SOFTWARE\\Microsoft\\Office\\16.0\\Wef\\Developer names its manifest",
  darwin: (home) => `a link to its manifest lies in ${path.posix.join(home, "Library/Containers/com.microsoft.Excel/Data/Documents/wef")}`,
};

/** What of this computer is not as before, and how it becomes so again. */
const changed = (platform, home) => {
  const certificates = (platform === "win32" ? path.win32 : path.posix).join(home, ".office-addin-dev-certs");
  return `This has changed on your computer:
- Your account trusts a certificate authority made here, "Developer CA for Microsoft Office Add-ins", for 30 days; its certificate and the one for
  localhost are in ${certificates}. Whoever holds the key beside them could pass for localhost to you.
  To undo it: npx ${UNDO_CERTIFICATES.join(" ")}
- Excel knows Retort as an add-in under development: ${REGISTERED[platform](home)}.
  To undo it: npm run excel -- stop
- A web server runs on https://localhost:3000 and serves this folder's build. It ends with npm run excel -- stop, too.`;
};

const STOPPED = `Excel no longer knows Retort, and its web server is stopped. The certificates stay, for other add-ins may use them.
To remove them: npx ${UNDO_CERTIFICATES.join(" ")}`;

const NO_EXCEL = "Excel is not available on this system; run `npm start` for the local workbook instead.";
const unknown = (words) => `npm run excel: "${words.join(" ")}" is not known. Give nothing, or stop: npm run excel -- stop`;

/**
 * @param {{ platform: string, home: string, words: string[], npx: (args: string[]) => number, say: (text: string) => void, refuse: (text: string) => void }} here
 *   words after `npm run excel --`; npx runs a package and gives its exit status
 * @returns {number} the exit status
 */
function sideload({ platform, home, words, npx, say, refuse }) {
  const refusal = REGISTERED[platform] === undefined ? NO_EXCEL : !["", "stop"].includes(words.join(" ")) ? unknown(words) : undefined;
  if (refusal !== undefined) {
    refuse(refusal);
    return 1;
  }
  if (words[0] === "stop") {
    const stopped = npx(["--yes", DEBUGGING, "stop", "manifest.xml"]);
    if (stopped === 0) say(STOPPED);
    return stopped;
  }
  // The tool below asks for certificates itself, but on Windows it does not, and Excel then shows no pane.
  const certified = platform === "win32" ? npx(["--yes", CERTIFICATES, "install"]) : 0;
  if (certified !== 0) return certified;
  const started = npx(["--yes", DEBUGGING, "start", "manifest.xml", "desktop", "--app", "excel", ...SERVER]);
  // Said also where the start failed half-way: what came before it stays.
  say(changed(platform, home));
  return started;
}

module.exports = { sideload };
