"use strict";
// A webpack plugin for pages that ask for an entry's script or style by its plain name: it puts in the built files, named by the hash of their content.
const { Compilation, sources, WebpackError } = require("webpack");

const TAG = /^ *<(?:script|link)\b[^<>]*>(?:<\/script>)?\n/gm;
const ENTRY = /\b(?:src|href)="([\w-]+)\.(js|css)"/;

class HashedPages {
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("HashedPages", (compilation) => {
      // After the last stage that changes what a hash is made of.
      const when = { name: "HashedPages", stage: Compilation.PROCESS_ASSETS_STAGE_OPTIMIZE_HASH + 1 };
      compilation.hooks.processAssets.tap(when, (assets) => {
        const wanted = new Set(compilation.entrypoints.keys());
        for (const page of Object.keys(assets).filter((name) => /^[^/]+\.html$/.test(name))) {
          const named = assets[page]
            .source()
            .toString()
            .replace(TAG, (tag) => {
              const [, entry, kind] = ENTRY.exec(tag) ?? [];
              const files = compilation.entrypoints
                .get(entry)
                ?.getFiles()
                .filter((file) => file.endsWith(`.${kind}`));
              if (files === undefined) return tag;
              wanted.delete(entry);
              return files.map((file) => tag.replace(`${entry}.${kind}`, file)).join("");
            });
          compilation.updateAsset(page, new sources.RawSource(named));
        }
        for (const entry of wanted) compilation.errors.push(new WebpackError(`no page asks for ${entry}.js`));
      });
    });
  }
}

module.exports = HashedPages;
