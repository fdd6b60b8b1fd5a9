import ts from "typescript";

/** What a global of ECMAScript holds itself and what its instances hold; a well-known symbol is written "@@iterator". */
export interface BuiltIn {
  readonly own: readonly string[];
  readonly ofInstances: readonly string[];
}

const EMPTY = "empty.ts";

/** Every global that ECMAScript 2016 has, by the declarations that the TypeScript compiler brings for it. */
export function es2016BuiltIns(): Readonly<Record<string, BuiltIn>> {
  const options: ts.CompilerOptions = { target: ts.ScriptTarget.ES2016, lib: ["lib.es2016.d.ts"], types: [] };
  const host = ts.createCompilerHost(options);
  const { getSourceFile } = host;
  host.getSourceFile = (name, target) => (name === EMPTY ? ts.createSourceFile(name, "", target) : getSourceFile(name, target));
  const program = ts.createProgram([EMPTY], options, host);
  const checker = program.getTypeChecker();
  const globals = checker.getSymbolsInScope(program.getSourceFile(EMPTY) as ts.Node, ts.SymbolFlags.Value);
  const namesIn = (type: ts.Type): string[] => checker.getAugmentedPropertiesOfType(type).map(({ name }) => name.replace(/^__@(\w+)@\d+$/, "@@$1"));
  const namesInInstances = (global: ts.Symbol | undefined): string[] => {
    const prototype = global && checker.getTypeOfSymbol(global).getProperty("prototype");
    return prototype === undefined ? [] : namesIn(checker.getTypeOfSymbol(prototype));
  };
  const ofEveryObject = namesInInstances(globals.find(({ name }) => name === "Object"));
  return Object.fromEntries(
    globals
      // Written so for types only; as a value it came in 2020.
      .filter(({ name }) => name !== "globalThis")
      .map((global) => [
        global.name,
        { own: namesIn(checker.getTypeOfSymbol(global)), ofInstances: [...namesInInstances(global), ...ofEveryObject] },
      ]),
  );
}
