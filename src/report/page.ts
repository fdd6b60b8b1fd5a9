import { Markup, node, single, type Child } from "./Markup";
import { POLICY, STYLE } from "./style";

/** A whole file: nothing in it is fetched from anywhere and nothing runs. */
export function page(title: string, ...body: readonly Child[]): string {
  const head = [
    single("meta", { charset: "utf-8" }),
    single("meta", { "http-equiv": "Content-Security-Policy", content: POLICY }),
    single("meta", { name: "viewport", content: "width=device-width, initial-scale=1" }),
    node("title", {}, title),
    // Its text is ours; escaping would be no CSS.
    new Markup(`<style>${STYLE}</style>`),
  ].map(({ html }) => html);
  return `<!DOCTYPE html>\n<html lang="en">\n<head>\n${head.join("\n")}\n</head>\n${node("body", {}, node("main", {}, node("h1", {}, title), ...body)).html}\n</html>\n`;
}

/** A headed section; nothing where it would be empty. */
export const section = (heading: string, ...children: readonly Child[]): readonly Markup[] => {
  const empty = children.every((child) => Array.isArray(child) && child.length === 0);
  return empty ? [] : [node("section", {}, node("h2", {}, heading), ...children)];
};

export const paragraph = (text: string, className?: string): readonly Markup[] => (text === "" ? [] : [node("p", { class: className }, text)]);
