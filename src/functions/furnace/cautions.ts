/** Said with everything about the gas that a heated vessel gives off. */
export const VENTED_VESSEL =
  "Never close a vessel that is heated: it bursts. The gas is flammable and toxic (carbon monoxide): outdoors or under a ducted hood, no flame at the vent. Defer to your local codes and to licensed practice; these figures are information, not permission.";

/** Said with everything about programmes and temperatures of furnaces. */
export const HOT_FURNACE =
  "Furnaces burn, set fire to what stands near and give off fumes from what is in them. Keep to the maker's limits, do not leave one unwatched that you do not know, and defer to your local codes and to licensed practice.";

/** Said with concentrations in a room. */
export const ROOM_AIR =
  "A mean of a room says nothing of the air you breathe beside the source, and carbon monoxide gives no warning: no charring or kiln without a ducted hood, a carbon monoxide alarm in every room. Defer to your local codes and to licensed practice; these figures are information, not permission.";

/** Said with calibration in boiling water and at metals' melting points. */
export const HOT_POINTS =
  "Boiling water and steam scald; metal baths are for trained people, and lead never. Defer to your local rules and to licensed practice.";
