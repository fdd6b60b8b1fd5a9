import { IEditorBridgeService } from "@univerjs/preset-sheets-core";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import { typedContent } from "../typedContent";

/** What was last saved as a file, or stood here on opening; anything else is unsaved. */
export class SavedContent {
  private saved: string | undefined;
  private readonly listeners: (() => void)[] = [];

  constructor(private readonly engine: GridEngine) {
    this.saved = typedContent(engine);
  }

  /** @param content left out where everything that is open now counts as unsaved */
  set(content?: string): void {
    this.saved = content;
    this.listeners.forEach((listener) => listener());
  }

  isAll(content = typedContent(this.engine)): boolean {
    return content === this.saved;
  }

  /** True also while something is being typed into a cell. */
  isLeftUnsaved(): boolean {
    return this.engine.injector.get(IEditorBridgeService).isVisible().visible || !this.isAll();
  }

  onSet(listener: () => void): void {
    this.listeners.push(listener);
  }
}
