import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { XMLValidator } from "fast-xml-parser";
import { PNG } from "pngjs";
import { NAMESPACE } from "../src/functions/catalogue";
import { MANIFEST_ORDER, VERSION_OVERRIDES_ORDER } from "./manifestOrder";
import { descendants, onlyChild, rootElement, type XmlElement } from "./xmlElements";

const ROOT = path.join(__dirname, "..");
const BUILT = path.join(ROOT, "dist", "addin");
const PLACEHOLDER = "https://localhost:3000/";
// Characters: Office Add-ins manifest reference, pages on ProviderName, DisplayName, Description, Resources, Namespace.
const SHORT_TEXT = 125;
const LONG_TEXT = 250;
const LONGEST_ADDRESS = 2048;
const LONGEST_ID = 32;
const LONGEST_NAMESPACE = 32;
// What the build makes of the sources; the other files that the manifest names are copied as they are.
const MADE_BY_THE_BUILD = ["functions.js", "functions.json", "help/index.html"];
const text = readFileSync(path.join(ROOT, "manifest.xml"), "utf8");

const manifest = rootElement(text);
const all = descendants(manifest);
const overrides = onlyChild(manifest, "VersionOverrides");
const resources = descendants(onlyChild(overrides, "Resources")).filter(({ attributes }) => attributes.id !== undefined);
const value = (element: XmlElement): string => element.attributes.DefaultValue ?? element.text;
const addresses = all.map(value).filter((text) => text.startsWith("http"));

describe("manifest.xml", () => {
  test("is well-formed", () => expect(XMLValidator.validate(text)).toBe(true));

  test("has the elements of OfficeApp in the order that Office asks for", () => {
    expect(childNames(manifest)).toEqual(inOrder(manifest, MANIFEST_ORDER));
  });

  test.each(Object.entries(VERSION_OVERRIDES_ORDER))("has the elements of %s in the order that Office asks for", (name, order) => {
    const found = [overrides, ...descendants(overrides)].filter((element) => element.name === name);
    expect(found.length).toBeGreaterThan(0);
    for (const element of found) expect(childNames(element)).toEqual(inOrder(element, order));
  });

  test("has every element that Office or the store requires", () => {
    const required = [
      "Id",
      "Version",
      "ProviderName",
      "DefaultLocale",
      "DisplayName",
      "Description",
      "IconUrl",
      "HighResolutionIconUrl",
      "SupportUrl",
    ];
    expect(childNames(manifest)).toEqual(expect.arrayContaining([...required, "Hosts", "Requirements", "DefaultSettings", "Permissions"]));
  });

  test("has a GUID of its own and a version of four parts", () => {
    expect(onlyChild(manifest, "Id").text).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    expect(onlyChild(manifest, "Version").text).toMatch(/^\d{1,5}(\.\d{1,5}){3}$/);
  });

  test("asks for the requirement sets of the floor, for read and write access and for no shared runtime", () => {
    const sets = descendants(onlyChild(manifest, "Requirements")).filter(({ name }) => name === "Set");
    expect(sets.map(({ attributes }) => [attributes.Name, attributes.MinVersion])).toEqual([
      ["CustomFunctionsRuntime", "1.2"],
      ["ExcelApi", "1.9"],
    ]);
    expect(onlyChild(manifest, "Permissions").text).toBe("ReadWriteDocument");
    expect(all.some(({ name }) => name === "Runtimes")).toBe(false);
  });

  test("keeps its texts within the lengths that Office takes", () => {
    const tooLong = (limit: number) => (element: XmlElement) => value(element).length > limit;
    const named = (...names: string[]) => manifest.children.filter(({ name }) => names.includes(name));
    const strings = (kind: string) => descendants(onlyChild(overrides, "Resources")).find(({ name }) => name === kind)?.children ?? [];
    expect(named("ProviderName", "DisplayName").filter(tooLong(SHORT_TEXT))).toEqual([]);
    expect(named("Description").filter(tooLong(LONG_TEXT))).toEqual([]);
    expect(strings("bt:ShortStrings").length * strings("bt:LongStrings").length).toBeGreaterThan(0);
    expect(strings("bt:ShortStrings").filter(tooLong(SHORT_TEXT))).toEqual([]);
    expect(strings("bt:LongStrings").filter(tooLong(LONG_TEXT))).toEqual([]);
    expect(addresses.filter((address) => address.length > LONGEST_ADDRESS)).toEqual([]);
  });

  test("gives every id once, in no more characters than Office takes", () => {
    const ids = all.flatMap(({ name, attributes }) => (attributes.id === undefined || name === "OfficeTab" ? [] : [attributes.id]));
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.filter((id) => id.length > LONGEST_ID)).toEqual([]);
  });

  test("uses every resource it defines and defines every resource it uses", () => {
    const used = new Set(all.flatMap(({ attributes }) => attributes.resid ?? []));
    expect([...used].sort()).toEqual(resources.map(({ attributes }) => attributes.id).sort());
  });

  test("gives the namespace that the cell formulas carry", () => {
    const namespace = resources.find(({ attributes }) => attributes.id === "Functions.Namespace");
    expect(namespace && value(namespace)).toBe(NAMESPACE);
    expect(NAMESPACE.length).toBeLessThanOrEqual(LONGEST_NAMESPACE);
  });

  test("has https addresses only, all below the placeholder that the build replaces", () => {
    expect(addresses.length).toBeGreaterThan(resources.length / 2);
    expect(addresses.filter((address) => !address.startsWith(PLACEHOLDER))).toEqual([]);
  });

  test("names icons of the sizes it says, drawn as PNG", () => {
    const icons: [string, number][] = [
      ...all.flatMap(({ attributes }) =>
        attributes.size === undefined ? [] : [[iconOf(attributes.resid), Number(attributes.size)] as [string, number]],
      ),
      [value(onlyChild(manifest, "IconUrl")), 32],
      [value(onlyChild(manifest, "HighResolutionIconUrl")), 64],
    ];
    expect(icons.map(([, size]) => size)).toEqual(expect.arrayContaining([16, 32, 80]));
    for (const [address, size] of icons) {
      const { width, height } = PNG.sync.read(readFileSync(path.join(ROOT, "src", fileOf(address))));
      expect([address, width, height]).toEqual([address, size, size]);
    }
  });

  test("names only files that exist: those built, or before a build those that the build takes", () => {
    const places = existsSync(path.join(BUILT, "functions.json")) ? [BUILT] : [path.join(ROOT, "src"), path.join(ROOT, "src", "workbook", "excel")];
    const exists = (file: string): boolean => places.some((place) => existsSync(path.join(place, file)));
    const missing = addresses.map(fileOf).filter((file) => !exists(file) && (places.includes(BUILT) || !MADE_BY_THE_BUILD.includes(file)));
    expect(missing).toEqual([]);
  });
});

const fileOf = (address: string): string => address.slice(PLACEHOLDER.length);

function iconOf(id: string | undefined): string {
  const icon = resources.find(({ attributes }) => attributes.id === id);
  if (icon === undefined) throw new Error(`no image ${id}`);
  return value(icon);
}

const childNames = ({ children }: XmlElement): string[] => children.map(({ name }) => name);

/** The children's names as they should come; a name that has no place in the order is left out and so fails. */
const inOrder = (element: XmlElement, order: readonly string[]): string[] =>
  childNames(element)
    .filter((name) => order.includes(name))
    .sort((one, other) => order.indexOf(one) - order.indexOf(other));
