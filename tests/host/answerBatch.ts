import { HostError, unmodelled } from "./HostError";
import { isHostObject, type HostObject } from "./HostObject";

// The request batches of the client library, as recorded from it. Action and path types are its own numbers.
interface ArgumentInfo {
  readonly Arguments?: readonly unknown[];
  readonly ReferencedObjectPathIds?: readonly (number | readonly number[])[];
}
interface ObjectPath {
  readonly ObjectPathType: number;
  readonly Name: string;
  readonly ParentObjectPathId?: number;
  readonly ArgumentInfo?: ArgumentInfo;
}
interface Query {
  readonly Select?: readonly string[];
  readonly Expand?: readonly string[];
}
interface Action {
  readonly Id: number;
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly ArgumentInfo?: ArgumentInfo;
  readonly QueryInfo?: Query;
}
export interface Batch {
  readonly Actions: readonly Action[];
  readonly ObjectPaths: Readonly<Record<string, ObjectPath>>;
}
interface ActionResult {
  readonly ActionId: number;
  readonly Value: unknown;
}
export interface BatchAnswer {
  readonly Error: { Code: string; Message: string; Location: string; HttpStatusCode: number; ActionIndex: number } | null;
  readonly Results: readonly ActionResult[];
}

const ACTION = { instantiate: 1, query: 2, method: 3, setProperty: 4, trace: 5 } as const;
const PATH = { workbook: 1, service: 2, method: 3, property: 4, item: 5, reference: 6, nullObject: 7 } as const;
const BAD_REQUEST = 400;

/** Where the paths of a batch begin. */
export interface Roots {
  workbook(): HostObject;
  service(name: string): HostObject;
  /** A range that an earlier batch asked to keep. */
  reference(id: string): HostObject;
}

/** Where a batch is made to break off, and with what. */
export interface Stop {
  readonly actionsDone: number;
  readonly error: HostError;
}

/** Runs the actions of one batch in order; the first error ends it, and says which action it was. What was done before it stays. */
export function answerBatch(batch: Batch, roots: Roots, stop?: Stop): BatchAnswer {
  const run = new BatchRun(batch, roots);
  const results: ActionResult[] = [];
  for (const [index, action] of batch.Actions.entries()) {
    try {
      if (index === stop?.actionsDone) throw stop.error;
      const value = run.perform(action);
      if (action.ActionType !== ACTION.setProperty) results.push({ ActionId: action.Id, Value: value ?? null });
    } catch (thrown) {
      if (!(thrown instanceof HostError)) throw thrown;
      const error = { Code: thrown.code, Message: thrown.message, Location: "", HttpStatusCode: BAD_REQUEST, ActionIndex: index };
      return { Error: error, Results: results };
    }
  }
  return { Error: null, Results: results };
}

class BatchRun {
  private readonly reached = new Map<number, HostObject | null>();

  constructor(
    private readonly batch: Batch,
    private readonly roots: Roots,
  ) {}

  perform(action: Action): unknown {
    if (action.ActionType === ACTION.trace) return null;
    const target = this.reach(action.ObjectPathId);
    switch (action.ActionType) {
      case ACTION.instantiate:
        return target && (target.identity?.() ?? {});
      case ACTION.query:
        return target && query(target, action.QueryInfo ?? {});
      case ACTION.method:
        return target && call(target, action.Name, this.given(action.ArgumentInfo));
      case ACTION.setProperty:
        if (target === null) throw new HostError("InvalidObjectPath", `${action.Name} set on a null object`);
        return member(target, "writes", action.Name)(this.given(action.ArgumentInfo)[0] as never);
      default:
        throw unmodelled(`action type ${action.ActionType}`);
    }
  }

  /** The object at the end of a path; each path is walked once a batch. */
  private reach(id: number): HostObject | null {
    const known = this.reached.get(id);
    if (known !== undefined) return known;
    const path = this.batch.ObjectPaths[id];
    if (path === undefined) throw unmodelled(`object path ${id}`);
    const object = this.walk(path);
    this.reached.set(id, object);
    return object;
  }

  private walk({ ObjectPathType, Name, ParentObjectPathId, ArgumentInfo }: ObjectPath): HostObject | null {
    if (ObjectPathType === PATH.workbook) return this.roots.workbook();
    if (ObjectPathType === PATH.service) return this.roots.service(Name);
    if (ObjectPathType === PATH.reference) return this.roots.reference(Name);
    if (ObjectPathType === PATH.nullObject) return null;
    const parent = ParentObjectPathId === undefined ? null : this.reach(ParentObjectPathId);
    if (parent === null) return null;
    const given = this.given(ArgumentInfo);
    if (ObjectPathType === PATH.property) return member(parent, "parts", Name)();
    if (ObjectPathType === PATH.item && parent.item) return parent.item(given[0] as never);
    if (ObjectPathType !== PATH.method) throw unmodelled(`${parent.kind}, path type ${ObjectPathType}`);
    const object = call(parent, Name, given);
    if (object !== null && !isHostObject(object)) throw unmodelled(`${parent.kind}.${Name}() as an object`);
    return object;
  }

  /** Arguments, with objects in the place of their path ids. */
  private given(info: ArgumentInfo = {}): unknown[] {
    return (info.Arguments ?? []).map((argument, index) => {
      const id = info.ReferencedObjectPathIds?.[index];
      if (!id) return argument;
      return this.reach(typeof id === "number" ? id : (id[0] ?? 0));
    });
  }
}

const call = (target: HostObject, name: string, given: readonly unknown[]): unknown => member(target, "methods", name)(...(given as never[]));

/** Selected members of an object, or of every item of a collection. */
function query(target: HostObject, { Select = [], Expand = [] }: Query): Record<string, unknown> {
  if (target.items) {
    const select = Select.filter((name) => name.toLowerCase() !== "items").map((name) => name.replace(/^items\//i, ""));
    return { _Items: target.items().map((item) => query(item, { Select: select })) };
  }
  if (Select.length + Expand.length === 0) throw unmodelled(`${target.kind}: a load that names no property`);
  const answer: Record<string, unknown> = { ...target.identity?.() };
  for (const path of [...Select, ...Expand]) {
    const [first = "", ...rest] = path.split("/");
    const name = onTheWire(first);
    const part = target.parts?.[name]?.();
    if (part === null) answer[name] = null;
    else if (rest.length > 0 && part) answer[name] = { ...(answer[name] as object | undefined), ...query(part, { Select: [rest.join("/")] }) };
    else answer[name] = member(target, "reads", name)();
  }
  return answer;
}

const onTheWire = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1);

function member<Kind extends "reads" | "writes" | "parts" | "methods">(
  target: HostObject,
  kind: Kind,
  name: string,
): NonNullable<HostObject[Kind]>[string] {
  const members = target[kind] as NonNullable<HostObject[Kind]> | undefined;
  const found = members?.[name];
  if (found === undefined) throw unmodelled(`${target.kind}.${name} (${kind})`);
  return found as NonNullable<HostObject[Kind]>[string];
}
