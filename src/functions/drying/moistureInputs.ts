import { mass, vesselMass } from "../../inputs/kinds/weighings";

/** The three weighings that a moisture content is worked out from. */
export const moistureInputs = {
  vessel: vesselMass('Empty vessel [g], or "tared".'),
  moist: mass("Vessel with the moist sample [g]."),
  dry: mass("Vessel with the dried, cooled sample [g]."),
};
