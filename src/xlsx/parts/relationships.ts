import type { PartSource } from "./FileParts";
import { readXml } from "./readXml";

/** A part that another part names. */
export interface Relationship {
  readonly id: string;
  /** The last word of its type: "worksheet", "chart". The words before it differ between the two kinds of the format. */
  readonly type: string;
  /** The part's name from the root, or an address outside the file. */
  readonly target: string;
  readonly isOutside: boolean;
}

/** Everything the part names; "" stands for the file as a whole. (ECMA-376 Part 2, 6.5.) */
export async function relationshipsOf(parts: PartSource, part: string): Promise<Relationship[]> {
  const folder = part.slice(0, part.lastIndexOf("/") + 1);
  const found: Relationship[] = [];
  await readXml(parts, `${folder}_rels/${part.slice(folder.length)}.rels`, {
    open: (name, { Id = "", Type = "", Target = "", TargetMode }) => {
      if (name !== "Relationship") return;
      const isOutside = TargetMode === "External";
      found.push({ id: Id, type: Type.slice(Type.lastIndexOf("/") + 1), target: isOutside ? Target : resolved(folder, Target), isOutside });
    },
  });
  return found;
}

/** "xl/charts/chart1.xml" of "../charts/chart1.xml" named in xl/drawings/. */
function resolved(folder: string, target: string): string {
  const steps: string[] = [];
  for (const step of (target.startsWith("/") ? target : folder + target).split("/")) {
    if (step === "..") steps.pop();
    else if (step !== "" && step !== ".") steps.push(step);
  }
  return steps.join("/");
}
