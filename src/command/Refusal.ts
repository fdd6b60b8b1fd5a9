/** Something stands in the way; the message says what and what to do. The program ends with 1. */
export class Refusal extends Error {
  override readonly name = "Refusal";
}

/** The command was not written as it has to be. The program ends with 2. */
export class WrongUsage extends Error {
  override readonly name = "WrongUsage";
}
