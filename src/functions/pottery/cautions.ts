/** Said with dry clay and glaze. */
export const SLIP_DUST =
  "Dust of dry clay and glaze holds silica and can hold lead or other poisons: weigh it wet, wipe and never sweep, and defer to your local codes and to licensed practice.";

/** Said with fired pieces. */
export const KILN_PIECES =
  "Cool fired pieces before they are weighed or boiled: hot clay cracks in water and scalds. Defer to your local rules and to licensed practice.";
