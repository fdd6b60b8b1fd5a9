import type { CellInput } from "../Input";
import { BELOW_ZERO, numberInput, numberOrWord } from "../number";
import type { NumberRule } from "../NumberRule";

// A hall of 50 m by 20 m by 10 m. Common practice, no source. A living room in litres lies above.
const LARGEST_ROOM = 10_000;

/** The volume of a room in cubic metres, above 0 to 10 000. Figures in litres are told apart and refused. */
export const roomVolume = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "m³",
    called: "a room volume",
    advice: "Give cubic metres: length x width x height in metres.",
    zeroIsBlank: true,
    bounds: [BELOW_ZERO, { above: LARGEST_ROOM, says: `above ${LARGEST_ROOM} m³ and looks like litres` }],
  });

/** The word that says that no air is changed, which reads as 0. */
export const CLOSED_ROOM = "closed";

// Fume hoods and clean rooms change their air some hundred times an hour (common practice, no source); flows in m3/h lie above.
const MOST_CHANGES = 600;

const airChanges: NumberRule = {
  unit: "1/h",
  called: "a number of air changes",
  advice: `Give air changes per hour, such as 0.5, or "${CLOSED_ROOM}".`,
  zeroIsBlank: false,
  bounds: [BELOW_ZERO, { above: MOST_CHANGES, says: `above ${MOST_CHANGES} an hour and looks like a flow` }],
};

/**
 * How often an hour the air of a room is changed, 0 to 600, or the word "closed", which reads as 0. So does a blank cell handed over as 0, and
 * then more gas is reckoned with and not less.
 */
export const airChangesPerHour = (about: string): CellInput<number> => numberOrWord(about, airChanges, CLOSED_ROOM);
