/** The inputs as read; undefined where left out or blank. */
export interface ReadComparison {
  readonly vessel: number;
  readonly dry: number;
  readonly char: number;
  readonly ash: number | undefined;
  readonly formula: string | undefined;
  readonly carbon: number | undefined;
  readonly hydrogen: number | undefined;
  readonly oxygen: number | undefined;
  readonly nitrogen: number | undefined;
  readonly sulfur: number | undefined;
}
