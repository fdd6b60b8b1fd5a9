/** An object as the client library sees it: members under their names on the wire (PascalCase). What is not listed is refused. */
export interface HostObject {
  readonly kind: string;
  /** Sent when the client first reaches the object, so that it can find it again. */
  readonly identity?: () => Readonly<Record<string, unknown>>;
  readonly reads?: Readonly<Record<string, () => unknown>>;
  readonly writes?: Readonly<Record<string, (value: never) => void>>;
  /** Objects reached by property; null where the host has none. */
  readonly parts?: Readonly<Record<string, () => HostObject | null>>;
  /** Methods give a value, an object, or null for a "…OrNullObject" that finds nothing. */
  readonly methods?: Readonly<Record<string, (...given: never[]) => unknown>>;
  /** The members of a collection. */
  readonly items?: () => readonly HostObject[];
  readonly item?: (key: never) => HostObject;
}

export const isHostObject = (value: unknown): value is HostObject => typeof value === "object" && value !== null && "kind" in value;
