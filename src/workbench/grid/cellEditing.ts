import { DeviceInputEventType, IEditorBridgeService, ILayoutService, SetCellEditVisibleOperation } from "@univerjs/preset-sheets-core";
import type { GridEngine } from "../../workbook/grid/GridEngine";

/** Enters what is being typed into a cell, as a click elsewhere would, and leaves the selection where it is. */
export function enterEdit({ api, book, injector }: GridEngine): void {
  if (!injector.get(IEditorBridgeService).isVisible().visible) return;
  api.syncExecuteCommand(SetCellEditVisibleOperation.id, {
    eventType: DeviceInputEventType.PointerDown,
    visible: false,
    unitId: book.getId(),
  });
}

/** Gives the keys to the selected cell. */
export const focusCells = ({ injector }: GridEngine): void => injector.get(ILayoutService).focus();
