import { seededUniform } from "./seededUniform";

/** Standard normal deviates, the same on every run (Box and Muller, Ann. Math. Stat. 29 (1958) 610). */
export function seededNormal(seed: number): () => number {
  const uniform = seededUniform(seed);
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
}
