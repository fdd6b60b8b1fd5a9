/** Said with every heating value. */
export const FUEL_FOR_REAL =
  "A heating value says nothing of smoke, of carbon monoxide, or of how hot a stove may run. Do not size burners, boilers or flues by it: defer to your local codes and to licensed practice.";

/** Said with the heat of drying. */
export const OVEN_HEAT =
  "Ovens burn, and what is wet with solvent, oil or fine dust can ignite in them; what dries too hot chars and catches fire. Keep to the maker's limits, let the steam out, and defer to your local codes and to licensed practice.";
