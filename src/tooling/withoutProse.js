"use strict";
// A TypeScript transformer for functions.js: a host only ever calls `compute`, and reads the rest from functions.json.
// Leaving out what is there to be read takes more than a quarter off the bundle (62.7 to 45.4 kB gzipped) that every calculating workbook loads.
const ts = require("typescript");

const DEFINING = new Set(["cellFunction", "tableFunction"]);
const FOR_READERS = new Set([
  "summary",
  "result",
  "working",
  "inCells",
  "refusesInCells",
  "inManyCells",
  "hasStepsInCells",
  "fixedBecause",
  "examples",
  "source",
  "caution",
]);
// Their second argument says what leaving an input out does.
const OPTIONAL = new Set(["optional", "omittable"]);

/** @type {import("typescript").TransformerFactory<import("typescript").SourceFile>} */
const withoutProse = (context) => {
  // In the inputs of a definition, a reader's first argument is its help line, and "detail" what more there is to say.
  const visitInputs = (node) => {
    if (ts.isPropertyAssignment(node) && ts.isIdentifier(node.name) && node.name.text === "detail") return undefined;
    const visited = ts.visitEachChild(node, visitInputs, context);
    const [about, ...rest] = ts.isCallExpression(visited) ? visited.arguments : [];
    if (about !== undefined && ts.isIdentifier(visited.expression) && OPTIONAL.has(visited.expression.text))
      return context.factory.updateCallExpression(visited, visited.expression, visited.typeArguments, [about]);
    if (about === undefined || !(ts.isStringLiteralLike(about) || ts.isTemplateExpression(about))) return visited;
    return context.factory.updateCallExpression(visited, visited.expression, visited.typeArguments, [
      context.factory.createStringLiteral(""),
      ...rest,
    ]);
  };
  const isInputs = (property) => property.name !== undefined && ts.isIdentifier(property.name) && property.name.text === "inputs";
  const isDefinition = (node) => ts.isCallExpression(node) && ts.isIdentifier(node.expression) && DEFINING.has(node.expression.text);
  const isForReaders = (property) => property.name !== undefined && ts.isIdentifier(property.name) && FOR_READERS.has(property.name.text);
  const visit = (node) => {
    const [definition] = isDefinition(node) ? node.arguments : [];
    if (definition === undefined || !ts.isObjectLiteralExpression(definition)) return ts.visitEachChild(node, visit, context);
    const kept = definition.properties
      .filter((property) => !isForReaders(property))
      .map((property) => ts.visitNode(property, isInputs(property) ? visitInputs : visit));
    return context.factory.updateCallExpression(node, node.expression, node.typeArguments, [context.factory.createObjectLiteralExpression(kept)]);
  };
  return (file) => ts.visitNode(file, visit);
};

module.exports = withoutProse;
