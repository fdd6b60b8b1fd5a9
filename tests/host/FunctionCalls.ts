import type { HostObject } from "./HostObject";

/** What the custom-functions runtime sends back for one call. */
export interface CallResult {
  readonly worked: boolean;
  readonly value: unknown;
  /** The runtime's number for the error: 7 is #VALUE!, 1 is #N/A. */
  readonly errorCode?: number;
}

// As recorded: category 1, type 1000 asks for a call; [number, worked, value or message, error code] comes back.
const CALL_CATEGORY = 1;
const CALL_TYPE = 1000;
// What a host read in the metadata, as it tells the runtime with each call: errors may pass (4), rich values may (8). Objects then
// travel as JSON text inside the JSON. Ours let rich values pass; metadata that a host still holds from an older version let both.
const RICH_VALUES = 8;
export const BOTH_FLAGS = 4 + RICH_VALUES;

/** A cell that shows an error, as an argument: a rich value. */
export const errorCell = (code: string): object => ({ type: "Error", basicType: "Error", basicValue: code });

/** The same to a host that lets errors pass: the runtime makes its own error object of it. */
export const errorObjectCell = (code: string): object => ({ type: "CustomFunctionError", code });

/** Calls registered custom functions through the client library's own runtime. */
export class FunctionCalls {
  private readonly waiting = new Map<number, (result: CallResult) => void>();
  private count = 0;

  constructor(private readonly send: (entry: readonly unknown[]) => void) {}

  /** @param given arguments as Excel hands them over: ranges as rows of cells, blanks as 0, left out ones as null */
  call(id: string, given: readonly unknown[], flags = RICH_VALUES): Promise<CallResult> {
    const call = ++this.count;
    return new Promise((resolve) => {
      this.waiting.set(call, resolve);
      this.send([CALL_CATEGORY, CALL_TYPE, "", JSON.stringify([call, id, given.map(wrapped), "Sheet1!A1", flags, null]), call]);
    });
  }

  /** The service that the runtime reports to. */
  service(): HostObject {
    return {
      kind: "CustomFunctions",
      methods: {
        _GetEnabledFeatures: () => [],
        _SetOsfControlContainerReadyForCustomFunctions: () => null,
        SetInvocationArrayResults: (results: readonly (readonly [number, boolean, unknown, number?])[]) => {
          for (const [call, worked, value, errorCode] of results) {
            this.waiting.get(call)?.(worked ? { worked, value } : { worked, value, ...(errorCode === undefined ? {} : { errorCode }) });
            this.waiting.delete(call);
          }
        },
      },
    };
  }
}

function wrapped(argument: unknown): unknown {
  if (Array.isArray(argument)) return argument.map(wrapped);
  return typeof argument === "object" && argument !== null ? { value: JSON.stringify(argument) } : argument;
}
