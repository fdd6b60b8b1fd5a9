"use strict";
// A webpack plugin that writes the licence notices of every package with a module in the bundle, found from webpack's own list of modules.
const fs = require("node:fs");
const path = require("node:path");
const { Compilation, sources, WebpackError } = require("webpack");

const IN_PACKAGES = /^(.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+)[\\/]/;
const NOTICE = /^(licen[cs]e|copying|notice)/i;
const RULE = `\n\n${"=".repeat(80)}\n\n`;

class Licences {
  /** @param {{ file: string, alsoInto?: string }} options file the notices go to, and a second folder where it is wanted as well */
  constructor(options) {
    this.options = options;
  }

  apply(compiler) {
    compiler.hooks.thisCompilation.tap("Licences", (compilation) => {
      compilation.hooks.processAssets.tap({ name: "Licences", stage: Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL }, () => {
        const { file, alsoInto } = this.options;
        const packages = bundledPackages(compilation.modules);
        if (packages.length === 0) return;
        const without = packages.filter(({ notice }) => notice === undefined);
        for (const { title } of without) compilation.errors.push(new WebpackError(`${title} has no licence that could be passed on`));
        const source = new sources.RawSource(`${packages.map(({ title, notice }) => `${title}\n\n${notice}`).join(RULE)}\n`);
        const folders = alsoInto === undefined ? [""] : ["", path.relative(compilation.outputOptions.path, alsoInto).replaceAll("\\", "/")];
        for (const folder of folders) compilation.emitAsset(path.posix.join(folder, file), source);
      });
    });
  }
}

function bundledPackages(modules) {
  const files = [...modules].flatMap((module) => module.modules ?? [module]).map((module) => module.nameForCondition?.() ?? "");
  const folders = new Set(files.flatMap((file) => IN_PACKAGES.exec(file)?.[1] ?? []));
  return [...folders].map(described).sort((one, other) => (one.title < other.title ? -1 : 1));
}

function described(folder) {
  const { name, version, license, author } = JSON.parse(fs.readFileSync(path.join(folder, "package.json"), "utf8"));
  const notices = fs.readdirSync(folder).filter((file) => NOTICE.test(file) && fs.statSync(path.join(folder, file)).isFile());
  const texts = notices.map((file) => fs.readFileSync(path.join(folder, file), "utf8").trim());
  const notice = texts.length > 0 ? texts.join("\n\n") : standardText(license, typeof author === "string" ? author : (author?.name ?? name));
  return { title: `${name} ${version}${license === undefined ? "" : ` (${license})`}`, notice };
}

// For packages that name their licence and come without its text. Texts: SPDX licence list, MIT and ISC.
const PERMISSION = {
  MIT: `Permission is hereby granted, free of charge, to any person obtaining a copy of this software and associated documentation files (the
"Software"), to deal in the Software without restriction, including without limitation the rights to use, copy, modify, merge, publish,
distribute, sublicense, and/or sell copies of the Software, and to permit persons to whom the Software is furnished to do so, subject to the
following conditions:

The above copyright notice and this permission notice shall be included in all copies or substantial portions of the Software.

THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR IMPLIED, INCLUDING BUT NOT LIMITED TO THE WARRANTIES OF
MERCHANTABILITY, FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE AUTHORS OR COPYRIGHT HOLDERS BE LIABLE FOR ANY
CLAIM, DAMAGES OR OTHER LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR OTHERWISE, ARISING FROM, OUT OF OR IN CONNECTION WITH THE
SOFTWARE OR THE USE OR OTHER DEALINGS IN THE SOFTWARE.`,
  ISC: `Permission to use, copy, modify, and/or distribute this software for any purpose with or without fee is hereby granted, provided that the
above copyright notice and this permission notice appear in all copies.

THE SOFTWARE IS PROVIDED "AS IS" AND THE AUTHOR DISCLAIMS ALL WARRANTIES WITH REGARD TO THIS SOFTWARE INCLUDING ALL IMPLIED WARRANTIES OF
MERCHANTABILITY AND FITNESS. IN NO EVENT SHALL THE AUTHOR BE LIABLE FOR ANY SPECIAL, DIRECT, INDIRECT, OR CONSEQUENTIAL DAMAGES OR ANY DAMAGES
WHATSOEVER RESULTING FROM LOSS OF USE, DATA OR PROFITS, WHETHER IN AN ACTION OF CONTRACT, NEGLIGENCE OR OTHER TORTIOUS ACTION, ARISING OUT OF
OR IN CONNECTION WITH THE USE OR PERFORMANCE OF THIS SOFTWARE.`,
};
const APACHE = "The text of the licence stands under the other packages of this list that have the Apache-2.0 licence.";

function standardText(license, holder) {
  if (license === "Apache-2.0") return `Copyright ${holder}\n\n${APACHE}`;
  return PERMISSION[license] === undefined ? undefined : `Copyright ${holder}\n\n${PERMISSION[license]}`;
}

module.exports = Licences;
