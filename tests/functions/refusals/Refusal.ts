/** A mistake that only someone who knows the trade's weights and units can make, and that gives a plausible number. */
export type Slip =
  | "swapped cells"
  | "another vessel"
  | "percentage for a fraction"
  | "kelvin for degrees Celsius"
  | "other unit of mass, density or pressure"
  | "clock times or dates for minutes"
  | "rows out of order"
  | "volume for mass"
  | "figures that cannot all be of one sample"
  | "confidence level for alpha or k"
  | "0 from an empty cell"
  | "letter for digit or wrong capital"
  | "nothing there to burn"
  | "degrees Fahrenheit for Celsius"
  | "rate per hour or per minute"
  | "volume in another unit"
  | "other unit of energy or heat"
  | "lengths or sizes in two units";

/** A call, all that its cell says (the error's code first, unless the function answers in words), and the slip it is about. */
export type Refusal = readonly [cell: string, says: string, slip?: Slip];
