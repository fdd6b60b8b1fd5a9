import { DEFER } from "./cautions";
import type { Guide } from "./Guide";

export const whatMyKilnGivesOff: Guide = {
  file: "guide-what-will-my-kiln-give-off",
  title: "What will my kiln give off, and what must I do about it",
  scene: "The numbers are invented: the orchard's char kiln turns 7.5 g of a test charge into vapour of about 35.1 g/mol.",
  cautions: [
    "The gas is toxic and flammable, and carbon monoxide gives no warning: outdoors or under a ducted hood, a carbon monoxide alarm in every room, no flame at the vent. Never close a vessel that is heated: it bursts.",
    "The figures below are information, not permission: a mean of a room says nothing of the air beside the source, and tar narrows every vent.",
    DEFER,
  ],
  steps: [
    {
      text: "The volume of the vapour as an ideal gas at 500 °C and 101 325 Pa.",
      byHand: "7.5 / 35.1 × 8.314463 × 773.15 / 101325 = 0.21368 × 0.063444 m³ = 0.013556 m³ = 13.56 L",
      cell: "=RETORT.GASVOLUME(7.5, 35.1, 500, 101325)",
      gives: 13.56,
    },
    {
      text: "It drives the air out, but never all at once: after five volumes of the vessel a well-mixed one still holds e to the power of -5 of its air. Until then the mixture inside may burn.",
      byHand: "e^-5 = 0.006738",
      cell: "=RETORT.AIRLEFT(5)",
      gives: 0.006738,
    },
    {
      text: "What 1 g of carbon monoxide an hour comes to in a shed of 30 m³ with half an air change an hour: this is why it is done outdoors. The air brings away 15 m³ an hour, in which 1 g is 1 / 28.01 mol or 0.873 L at 25 °C.",
      byHand: "0.000873 / 15 = 58 millionths: 58 ppm",
      cell: "=RETORT.ROOM.PPM(1, 28.01, 30, 0.5)",
      row: "Mean in the room, steady",
      gives: 58,
    },
    {
      text: "What to do: move the work outdoors or under a duct that a licensed person has looked at; hang up alarms; keep vents open and clear; keep people and flames away; ask what your local codes want before you light it.",
    },
  ],
  sheet: { kind: "liquids", label: "Charring with liquids caught", typed: { vessel: "char kiln" } },
};
