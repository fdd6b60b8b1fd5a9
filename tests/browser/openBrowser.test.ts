import { openBrowser } from "./openBrowser";

test("a RETORT_BROWSER that does not exist is an error that says what to give", () => {
  const before = process.env.RETORT_BROWSER;
  process.env.RETORT_BROWSER = "no/such/browser";
  try {
    expect(() => openBrowser()).toThrow(
      "RETORT_BROWSER names no/such/browser, which does not exist. Give the path of a Chrome, Edge or Chromium executable.",
    );
  } finally {
    if (before === undefined) delete process.env.RETORT_BROWSER;
    else process.env.RETORT_BROWSER = before;
  }
});
