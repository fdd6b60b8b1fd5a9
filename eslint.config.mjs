import js from "@eslint/js";
import tseslint from "typescript-eslint";

// Rules that look at types: promises nobody waits for, cases left out. Not those that call a condition or a cast needless: the types of Excel
// and of the grid promise more than their cells hold (`hasSpill` is null where a range is mixed), and some casts called needless are not.
const TYPED = Object.fromEntries(
  [
    "await-thenable",
    "no-array-delete",
    "no-floating-promises",
    "no-for-in-array",
    "no-implied-eval",
    "no-misused-promises",
    "no-redundant-type-constituents",
    "no-unnecessary-template-expression",
    "only-throw-error",
    "prefer-promise-reject-errors",
    "related-getter-setter-pairs",
  ].map((rule) => [`@typescript-eslint/${rule}`, "error"]),
);

export default tseslint.config(
  { ignores: ["dist/**", "node_modules/**", "coverage/**"] },
  js.configs.recommended,
  ...tseslint.configs.recommended,
  {
    files: ["**/*.ts"],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: { ...TYPED, "@typescript-eslint/switch-exhaustiveness-check": ["error", { considerDefaultExhaustiveForUnions: true }] },
  },
  {
    files: ["**/*.js"],
    languageOptions: {
      sourceType: "commonjs",
      globals: {
        require: "readonly",
        module: "writable",
        exports: "writable",
        process: "readonly",
        __dirname: "readonly",
        __filename: "readonly",
        console: "readonly",
        Buffer: "readonly",
        URL: "readonly",
        setTimeout: "readonly",
      },
    },
    rules: { "@typescript-eslint/no-require-imports": "off" },
  },
  {
    files: ["**/*.mjs"],
    languageOptions: { globals: { console: "readonly", process: "readonly", URL: "readonly", setTimeout: "readonly", clearTimeout: "readonly" } },
  },
);
