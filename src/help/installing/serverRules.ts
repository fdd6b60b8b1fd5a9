// How a web server should hand out a built folder. What is named by its content never changes; everything else is asked for afresh, but for
// the icons: Office takes none that may not be kept (Office Add-ins documentation, "Hosting requirements" of the manifest).

const KEEP_FOR_EVER = "public, max-age=31536000, immutable";
const ASK_AGAIN = "no-cache";
const KEEP_A_DAY = "public, max-age=86400";
// Excel on the web reads functions.json from a page of its own. Nothing here is secret or differs by who asks.
const FOR_ALL: readonly (readonly [name: string, value: string])[] = [
  ["Access-Control-Allow-Origin", "*"],
  ["X-Content-Type-Options", "nosniff"],
];

const HELP_AND_FUNCTIONS = ["functions.js", "functions.json", "help/*"];

/**
 * A file in the format that several static hosts read, `_headers`. Their rules add up, so no two give one header for the same address.
 * @param folder path on the host that the folder is served from
 * @param pages the folder's own files of fixed names
 */
export function headersFile(folder: string, pages: readonly string[]): string {
  const base = folder.endsWith("/") ? folder : `${folder}/`;
  const rule = (path: string, headers: readonly (readonly [string, string])[]): string =>
    [`${base}${path}`, ...headers.map(([name, value]) => `  ${name}: ${value}`)].join("\n");
  return `${[
    `# Read from the site's top folder: move this file there if ${base === "/" ? "the built folder is served from a lower one" : `${base} is not the top`}.`,
    rule("*", FOR_ALL),
    rule("hashed/*", [["Cache-Control", KEEP_FOR_EVER]]),
    rule("assets/*", [["Cache-Control", KEEP_A_DAY]]),
    ...[...pages, ...HELP_AND_FUNCTIONS].map((path) => rule(path, [["Cache-Control", ASK_AGAIN]])),
  ].join("\n")}\n`;
}

/** An `.htaccess` file for Apache 2.4. It works in whatever folder it lies. */
export const apacheRules = (): string => `AddType text/javascript .js
AddType application/json .json
<IfModule mod_headers.c>
${FOR_ALL.map(([name, value]) => `  Header set ${name} "${value}"`).join("\n")}
  Header set Cache-Control "${ASK_AGAIN}"
  Header set Cache-Control "${KEEP_FOR_EVER}" "expr=%{REQUEST_URI} =~ m#/hashed/#"
  Header set Cache-Control "${KEEP_A_DAY}" "expr=%{REQUEST_URI} =~ m#/assets/#"
</IfModule>
`;

/** The same for nginx, whose rules stand in the server's own configuration. */
export function nginxRules(folder: string): string {
  const location = (path: string, cache: string): string =>
    [`location ${folder}${path} {`, ...[...FOR_ALL, ["Cache-Control", cache]].map(([name, value]) => `  add_header ${name} "${value}";`), "}"].join(
      "\n",
    );
  return `${[location("", ASK_AGAIN), location("hashed/", KEEP_FOR_EVER), location("assets/", KEEP_A_DAY)].join("\n")}\n`;
}
