import { escaped, page } from "../markup";
import { firstAid } from "./firstAid";
import { readers } from "./readers";
import { apacheRules, headersFile, nginxRules } from "./serverRules";

export const INSTALLING_FILE = "installing.html";
export const INSTALLING_HEADING = "Installing Retort in Excel";
export const FIRST_AID_HEADING = "First aid";

const EXAMPLE_FOLDER = "/retort/";
const ADDIN_PAGES = ["functions.html", "taskpane.html", "manifest.xml"];

/** The guide to installing and updating: one list of steps a reader, first aid, and the rules for a web server. */
export const installingPage = (): string =>
  page(
    INSTALLING_HEADING,
    [
      `<p><a href="index.html">All functions</a></p>`,
      `<h1>${escaped(INSTALLING_HEADING)}</h1>`,
      ...readers.map(
        ({ heading, before, steps }) =>
          `<h2>${escaped(heading)}</h2>\n<p>${escaped(before)}</p>\n<ol>\n${steps.map((step) => `<li>${escaped(step)}</li>`).join("\n")}\n</ol>`,
      ),
      ...serverRules(),
      `<h2>${escaped(FIRST_AID_HEADING)}</h2>`,
      ...firstAid.map(
        ({ sign, remedy }) => `<h3>${escaped(sign)}</h3>\n<ul>\n${remedy.map((line) => `<li>${escaped(line)}</li>`).join("\n")}\n</ul>`,
      ),
    ].join("\n"),
  );

const serverRules = (): string[] => [
  `<h3>Headers</h3>`,
  `<p>The built folder holds them twice, as _headers for static hosts that read such a file and as .htaccess for Apache. For nginx they go into its configuration; here the folder is served from ${escaped(EXAMPLE_FOLDER)}.</p>`,
  listing("nginx", nginxRules(EXAMPLE_FOLDER)),
  listing(".htaccess", apacheRules()),
  listing("_headers", headersFile(EXAMPLE_FOLDER, ADDIN_PAGES)),
];

const listing = (name: string, text: string): string => `<p>${escaped(name)}</p>\n<pre>${escaped(text.trimEnd())}</pre>`;
