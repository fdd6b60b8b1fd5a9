import { ExcelHost } from "../ExcelHost";
import { offerFunctionRegistry } from "../offerFunctionRegistry";
import { offerOffice } from "../offerOffice";

// Stands in front of the Excel client library in a page; what stands behind it calls finishOffice().
const global = window as unknown as Record<string, unknown>;
const host = new ExcelHost();
host.calculate = () => "";
offerFunctionRegistry(global);
Object.assign(global, { excelHost: host, _richApiNativeBridge: host.bridge, finishOffice: () => offerOffice(global, host) });
