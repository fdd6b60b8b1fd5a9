import { LocalWorkbook } from "./localWorkbook";

jest.setTimeout(120_000);

let local: LocalWorkbook;
beforeAll(async () => {
  local = await LocalWorkbook.open();
});
afterAll(() => local?.close());

const ones = (count: number, between: string): string => Array.from({ length: count }, () => "1").join(between);
const nested = (levels: number): string => `=${"SUM(".repeat(levels)}1${")".repeat(levels)}`;
const BEYOND: readonly (readonly [what: string, text: string, said: RegExp])[] = [
  ["2,700 operators", `=${ones(2701, "+")}`, /2700 operators; this page takes 1000 at most/],
  ["9,000 characters", `=${"A1+A2,".repeat(1500)}A1`, /9003 characters; a cell takes 8192 at most/],
  ["70 levels", nested(70), /70 levels of brackets within one another; 64 is the most/],
  ["256 arguments", `=SUM(${ones(256, ",")})`, /256 arguments; it takes 255 at most/],
  ["a text of 300 characters", `="${"x".repeat(300)}"`, /a text in this formula has 300 characters; 255 is the most/],
  ["a text of 40,000 characters", "oak ".repeat(10_000), /this text has 40000 characters; a cell takes 32767 at most/],
  ["a word of 9,000 characters", "x".repeat(9000), /9000 characters without a space between; this page takes 4000 at most/],
];

const said = (sentence: RegExp): Promise<void> => local.page.locator("#notice", { hasText: sentence }).waitFor();

/** As a paste by the keyboard: what has the focus is told of it. */
const paste = (text: string): Promise<void> =>
  local.page.evaluate((given) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", given);
    document.activeElement?.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
  }, text);

async function stands(cell: string, value: string | number): Promise<void> {
  await local.page.keyboard.press("Escape");
  await local.settled();
  expect((await local.read(cell)).value).toBe(value);
}

describe.each(BEYOND)("%s", (_what, text, sentence) => {
  beforeAll(() => local.type("J3", "kept"));

  test("typed over a cell is refused in words, and the cell keeps what it held", async () => {
    await local.goTo("J3");
    await local.page.keyboard.insertText(text);
    await said(sentence);
    await local.page.keyboard.press("Enter");
    await stands("J3", "kept");
  });

  test("pasted into what is being typed is refused, and the rest stays in the editor", async () => {
    await local.goTo("J3");
    await local.page.keyboard.type(text.charAt(0));
    await paste(text.slice(1));
    await said(sentence);
    await local.page.keyboard.type("2");
    await local.page.keyboard.press("Enter");
    await stands("J3", text.startsWith("=") ? 2 : `${text.charAt(0)}2`);
    await local.type("J3", "kept");
  });

  test("pasted onto cells, nothing of it goes in", async () => {
    await local.goTo("J3");
    await paste(`1\t2\n${text}\t3`);
    await said(/^Nothing was pasted\. /);
    await stands("J3", "kept");
  });
});

test("what a cell can hold is entered, and the grid goes on", async () => {
  await local.goTo("J4");
  await local.page.keyboard.insertText(nested(64));
  await local.page.keyboard.press("Enter");
  await local.settled();
  expect(await local.read("J4")).toMatchObject({ formula: nested(64), value: 1 });
  await local.type("J5", "=J4+1");
  expect((await local.read("J5")).value).toBe(2);
});

test("a formula is entered as typed where the names offered are still those of its beginning", async () => {
  await local.goTo("J6");
  await local.page.keyboard.type("=RE", { delay: 20 });
  await local.page.getByText("RECEIVED", { exact: true }).first().waitFor();
  // Within the 0.3 s before the list is looked up again.
  await local.page.keyboard.insertText("TORT.MOISTURE.WET(25,35,31.5)");
  await local.page.keyboard.press("Enter");
  await local.settled();
  expect(await local.read("J6")).toMatchObject({ formula: "=RETORT.MOISTURE.WET(25,35,31.5)", error: "" });
});

test("a name that is offered for the word before the caret is taken by Enter", async () => {
  await local.goTo("J7");
  await local.page.keyboard.type("=PRODUC", { delay: 20 });
  await local.page.getByText("PRODUCT", { exact: true }).first().waitFor();
  await local.page.keyboard.press("Enter");
  // The engine puts the caret behind the bracket a moment later.
  await local.page.waitForTimeout(500);
  await local.page.keyboard.type("2,3)", { delay: 20 });
  await local.page.keyboard.press("Enter");
  await local.settled();
  expect(await local.read("J7")).toMatchObject({ formula: "=PRODUCT(2,3)", value: 6 });
});

test("nothing was complained of", () => expect(local.complaints).toEqual([]));
