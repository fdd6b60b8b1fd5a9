import { greenTheme } from "@univerjs/themes";
import { NAMESPACE } from "../functions/catalogue";
import { WHOLE_SCREEN } from "../pane/runSheet/weighIn/wholeScreenButton";
import { asNoStep } from "../workbook/grid/engine/asOneStep";
import type { GridEngine } from "../workbook/grid/GridEngine";
import { gridSheet, insertGridSheet, replaceSheets } from "../workbook/grid/writing/GridSheet";
import { GridWorkbook } from "../workbook/grid/GridWorkbook";
import { openGrid } from "../workbook/grid/openGrid";
import { typeInto } from "../workbook/grid/typing/typeInto";
import { cellMirror } from "./cellMirror";
import { CustomFunctionsHost } from "./functionsHost/CustomFunctionsHost";
import { demo, opensAt } from "./demo/demo";
import type { FunctionsMetadata } from "./functionsHost/FunctionsMetadata";
import { calculateBeforeDrawn, calculatingParts } from "./grid/calculatingParts";
import { withCircles } from "./grid/tellCircles";
import { withDoubts, type Doubts } from "./withDoubts";
import type { WorkbenchWindow } from "./WorkbenchWindow";

const byId = <E extends HTMLElement>(id: string): E => document.getElementById(id) as E;

/**
 * The page: the built functions registered as a spreadsheet would, the demo calculated, then the grid to see it in and the pane beside
 * it. What calculates comes first and alone; the larger part of the engine, which draws, is fetched when the first cells have their answers.
 */
async function start(): Promise<void> {
  const host = new CustomFunctionsHost();
  host.install(window);
  const [metadata] = await Promise.all([metadataOf("functions.json"), loadScript("functions.js")]);
  const engine: GridEngine = openGrid({
    functions: host.functions(metadata, NAMESPACE),
    presets: calculatingParts,
    theme: greenTheme,
    data: { name: "Workbook" },
  });
  calculateBeforeDrawn(engine);
  const doubts: Doubts = { kept: undefined, lacking: [] };
  const grid = new GridWorkbook(engine);
  const workbook = withCircles(withDoubts(grid, doubts), engine);
  await replaceSheets(
    engine,
    demo.map((plan) => gridSheet(plan, plan.name)),
  );
  await workbook.select(opensAt);
  (window as WorkbenchWindow).retortWorkbench = { workbook, engine, type: (address, content) => typeInto(engine, address, content) };
  await cellMirror(grid, engine, byId("selected"));
  await drawn(engine, doubts);
  document.body.dataset.ready = "yes";
  keepForOffline();
}

/** Where the page is hosted, keeps it for a visit without a network. `npm start` serves it from this computer, which needs no network. */
function keepForOffline(): void {
  if (!["127.0.0.1", "localhost"].includes(location.hostname)) void navigator.serviceWorker?.register("offline.js");
}

/** The grid, the bar above it and the pane beside it. */
async function drawn(engine: GridEngine, doubts: Doubts): Promise<void> {
  const [
    { showGrid },
    { bar },
    { SavedContent },
    { guardUnsaved },
    { demoRun },
    { partKeys },
    { ownFiles },
    { printing },
    { fileCode },
    { dropFile },
  ] = await Promise.all([
    import(/* webpackChunkName: "grid" */ "./grid/showGrid"),
    import(/* webpackChunkName: "grid" */ "./bar/bar"),
    import(/* webpackChunkName: "grid" */ "./unsaved/SavedContent"),
    import(/* webpackChunkName: "grid" */ "./unsaved/guardUnsaved"),
    import(/* webpackChunkName: "grid" */ "./demo/orchardRun"),
    import(/* webpackChunkName: "grid" */ "./partKeys"),
    import(/* webpackChunkName: "grid" */ "./ownFiles"),
    import(/* webpackChunkName: "grid" */ "./paper/printing"),
    import(/* webpackChunkName: "grid" */ "./fileCode"),
    import(/* webpackChunkName: "grid" */ "./dropFile"),
  ]);
  const pane = byId<HTMLIFrameElement>("pane");
  const notice = byId("notice");
  const say = (sentence: string): void => {
    notice.textContent = sentence;
    notice.className = "problem";
  };
  await showGrid(engine, byId("grid"), say);
  // Not before the first answers: a run sheet has more formulas than the rest of the demo. The engine shows a sheet that it inserts.
  const shown = engine.book.getActiveSheet();
  asNoStep(engine, () => insertGridSheet(engine, gridSheet(demoRun, demoRun.name)));
  engine.book.setActiveSheet(shown);
  await engine.settled();
  const saved = new SavedContent(engine);
  const { save, ...ofBar } = bar(
    { engine, saved, doubts },
    {
      ...{ openFile: byId("open-file"), file: byId("file"), saveFile: byId("save-file") },
      ...{ dialog: byId("unsaved"), anew: byId("anew"), notice: byId("notice"), notShown: byId("not-shown") },
    },
  );
  const lent = (window as WorkbenchWindow).retortWorkbench;
  if (lent !== undefined) lent.files = ownFiles(ofBar);
  const keys = { s: save, p: printing({ engine, paper: byId("paper"), button: byId("print-sheet") }) };
  pageKeys(window, keys);
  dropFile(window, ofBar);
  const parts = partKeys({ engine, bar: byId("bar"), pane });
  // Keys pressed in a frame, and files dropped on it, never reach the page around it.
  pane.onload = () => {
    if (pane.contentWindow) {
      pageKeys(pane.contentWindow, keys);
      dropFile(pane.contentWindow, ofBar);
    }
    parts.listenInPane();
    // The pane asks for the whole of a small screen while one weighs in.
    pane.contentDocument?.addEventListener(WHOLE_SCREEN, ({ detail }) => document.body.classList.toggle("pane-only", detail));
  };
  paneButton(byId("show-pane"), pane);
  aboutButton(byId("show-about"));
  pane.src = "pane.html";
  void guardUnsaved({ ...ofBar, engine, saved, doubts, state: byId("kept"), offer: byId("offer") });
  // Tried again when it is needed.
  fileCode().catch(() => undefined);
}

const metadataOf = async (address: string): Promise<FunctionsMetadata> => (await fetch(address)).json() as Promise<FunctionsMetadata>;

/** The button that shows and hides the pane; the grid takes the room. */
function paneButton(button: HTMLButtonElement, pane: HTMLElement): void {
  button.onclick = () => {
    pane.hidden = !pane.hidden;
    button.setAttribute("aria-expanded", String(!pane.hidden));
  };
}

/** The button that says on a small screen what the page is; the style sheet shows the text by the button's state, or always. */
function aboutButton(button: HTMLButtonElement): void {
  button.onclick = () => button.setAttribute("aria-expanded", String(button.getAttribute("aria-expanded") === "false"));
}

/** Runs a script of this page's own origin. Rejects when it cannot be fetched. */
function loadScript(address: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = address;
    script.onload = () => resolve();
    script.onerror = () => reject(new Error(`${address} did not load`));
    document.head.append(script);
  });
}

/**
 * Ctrl+S, or Cmd+S on a Mac, saves the sheets wherever the focus is in the window, and Ctrl+P prints the sheet in view, neither the page as the
 * browser would.
 */
function pageKeys(target: Window, actions: Readonly<Record<string, () => void>>): void {
  const onKey = (event: KeyboardEvent): void => {
    const action = actions[event.key.toLowerCase()];
    if (!(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey || action === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    if (!event.repeat) action();
  };
  // Before the grid, which has keys of its own.
  target.addEventListener("keydown", onKey, { capture: true });
}

start().catch((problem: unknown) => {
  console.error(problem);
  byId("notice").textContent = "The local workbook could not start. Reload the page; if that does not help, build it again with npm start.";
  byId("notice").className = "problem";
});
