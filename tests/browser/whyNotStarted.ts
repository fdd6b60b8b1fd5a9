/** The Debian and Ubuntu packages of the libraries that Chromium, Chrome and Edge link to: NSS and NSPR looked up, the others from memory. */
const PACKAGE_OF: Readonly<Record<string, string>> = {
  "libnss3.so": "libnss3",
  "libnssutil3.so": "libnss3",
  "libsmime3.so": "libnss3",
  "libnspr4.so": "libnspr4",
  "libplc4.so": "libnspr4",
  "libplds4.so": "libnspr4",
  "libexpat.so.1": "libexpat1",
  "libgcc_s.so.1": "libgcc-s1",
  "libfontconfig.so.1": "libfontconfig1",
  "libglib-2.0.so.0": "libglib2.0-0",
  "libgobject-2.0.so.0": "libglib2.0-0",
  "libgio-2.0.so.0": "libglib2.0-0",
  "libdbus-1.so.3": "libdbus-1-3",
  "libatk-1.0.so.0": "libatk1.0-0",
  "libatk-bridge-2.0.so.0": "libatk-bridge2.0-0",
  "libatspi.so.0": "libatspi2.0-0",
  "libcups.so.2": "libcups2",
  "libdrm.so.2": "libdrm2",
  "libgbm.so.1": "libgbm1",
  "libasound.so.2": "libasound2",
  "libpango-1.0.so.0": "libpango-1.0-0",
  "libcairo.so.2": "libcairo2",
  "libudev.so.1": "libudev1",
  "libxkbcommon.so.0": "libxkbcommon0",
  "libX11.so.6": "libx11-6",
  "libxcb.so.1": "libxcb1",
  "libXcomposite.so.1": "libxcomposite1",
  "libXdamage.so.1": "libxdamage1",
  "libXext.so.6": "libxext6",
  "libXfixes.so.3": "libxfixes3",
  "libXrandr.so.2": "libxrandr2",
};

const MISSING_LIBRARY = /error while loading shared libraries: ([^\s:]+)/;

/** What to do about a browser that did not start: which system package to install, where a missing library is why; else what the browser said. */
export function whyNotStarted(file: string, said: string): string {
  const [, library] = MISSING_LIBRARY.exec(said) ?? [];
  if (library === undefined) return `The browser ${file} did not start:\n${said}`;
  const debian = PACKAGE_OF[library];
  const mend = debian === undefined ? "Install the system package that holds it." : `On Debian or Ubuntu: apt-get install ${debian}`;
  return `The browser ${file} did not start, because the system library ${library} is missing. ${mend}`;
}
