import type { FireColumn } from "../sheet/Weighed";

/** Words of the fire tables: what is noted of each firing, in the order of the work. */
export const fireWords = {
  heading: { charring: "2 CHARRING: the fire", ashing: "3 ASHING: the fire", heating: "2 HEATING: the fire" },
  firing: (number: number): string => `Firing ${number}`,
  /** @param areClose true where the columns of many samples stand so close that two lines do not hold more */
  columns: (unit: "C" | "F", areClose: boolean): Readonly<Record<FireColumn, string>> => ({
    lit: "Lit (clock)",
    set: `Set to, °${unit}`,
    measured: areClose ? `Sample, °${unit}` : `At sample, °${unit}`,
    held: "Held, min",
    quiet: "Vent quiet",
    opened: "Opened, cold",
    seen: "Seen (smoke, edges)",
  }),
  lit: { title: "Lit", prompt: "When the kiln was switched on or lit, vessel closed and vent open: 13:20." },
  set: { title: "Set to", prompt: "The temperature the kiln is set to." },
  measured: { title: "At the sample", prompt: "The highest temperature measured beside the vessel; a set-point is not a temperature." },
  held: { title: "Held", prompt: "Minutes at that temperature.", refusal: "Type the minutes held as a number from 0 to 10000." },
  quiet: { title: "Vent quiet", prompt: "When no more vapour was seen at the vent: 14:25." },
  opened: { title: "Opened, cold", prompt: "When the vessel, cooled closed, was cold and was opened: 16:05." },
  seen: { title: "Seen", prompt: "Colour of the smoke, white or grey edges on the char, cracks, a lid that moved.", refusal: "" },
  /** How white edges are noted, and how that there are none; a note may say both, of two places. What smoke was white is no edge. */
  whiteEdges: {
    white: ["*white edge*", "*white ash*edge*", "*white on*edge*", "*white at*edge*", "*white along*edge*", "*edge*white*"],
    both: ["*no white edge*white edge*", "*white edge*no white edge*"],
    notWhite: [
      ...["*no white*edge*", "*without white*edge*", "*not white*edge*", "*edge*no white*", "*edge*not white*", "*edge*without white*"],
      ...["*edge*white smoke*", "*edge*white steam*", "*edge*white vapour*", "*no edge*white*"],
    ],
    onlyNot: "*no white edge*no white edge*",
  },
} as const;
