/** An error that the host sends back over the wire, as Excel would. */
export class HostError extends Error {
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}

/** What nobody has modelled must never pass for working. */
export const unmodelled = (what: string): HostError => new HostError("NotModelled", `in-memory host: ${what} is not modelled`);

export const notFound = (what: string): HostError => new HostError("ItemNotFound", `The requested resource doesn't exist: ${what}`);

export const badArgument = (what: string): HostError =>
  new HostError("InvalidArgument", `The argument is invalid or missing or has an incorrect format: ${what}`);
