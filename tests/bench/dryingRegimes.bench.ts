import { markdown, outcomes } from "../drying/end/regimeOutcomes";
import { seededNormal } from "../numerics/seededNormal";

// How often DRYING.END's 95 % uncertainty covers the true end, by ways of drying it is not told of: 576 runs a row.
const ROUNDS = 6;

console.log(markdown(outcomes(ROUNDS, seededNormal(60))));
