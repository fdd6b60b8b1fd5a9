// Arithmetic on weighings, in twelve figures: buoyancy, yields, moistures and bases, each from its definition.

/** Mass of a body from a reading: the balance was adjusted with weights of 8000 kg/m3 in air of 1.2 kg/m3. */
const buoyant = (reading, density) => (reading * (1 - 1.2 / 8000)) / (1 - 1.2 / density);

/** Per cent on the dry basis from per cent as received. */
const dryBasis = (received, moisture) => (100 * received) / (100 - moisture);

// Sample and char in mg: MaCFP materials database, NIST wood data, runs R1 to R12.
const pine = [
  [12.037, 1.747],
  [11.921, 1.843],
  [12.04, 1.843],
  [11.903, 1.846],
  [12.024, 1.854],
  [11.989, 1.844],
  [12.037, 1.846],
  [12.043, 1.847],
  [12.019, 1.866],
  [5.075, 0.707],
  [5.046, 0.7],
  [5.048, 0.7],
];

// T. R. Miles, table of wood fuels: per cent as received, moisture in per cent.
const woodFuels = [
  [11.92, 11.45],
  [44.24, 11.45],
  [38.76, 11.45],
  [6.47, 63],
  [30.38, 63],
  [9.14, 52.63],
  [36.27, 52.63],
  [1.96, 52.63],
  [24.17, 52.63],
  [12.93, 37.81],
  [46.02, 37.81],
  [3.24, 37.81],
];

const hydrogenInWater = 2.016 / 18.015;

console.log(
  JSON.stringify({
    "2 g of 2700 kg/m3": buoyant(2, 2700),
    "2.32 g of 920 kg/m3": buoyant(2.32, 920),
    "100 g of 1330 kg/m3": buoyant(100, 1330),
    "1 g of conventional mass, 2700 kg/m3": buoyant(1, 2700),
    "1 g of conventional mass, 21450 kg/m3": buoyant(1, 21450),
    ...Object.fromEntries(pine.map(([sample, char], index) => [`yield R${index + 1}`, (100 * char) / sample])),
    ...Object.fromEntries(woodFuels.map(([received, moisture]) => [`${received} at ${moisture}`, dryBasis(received, moisture)])),
    "yield without ash": (2.5 - 0.1) / (10 - 0.1),
    "25 % after 6.40 % of moisture regained": 25 / (1 - 0.064),
    "moisture of 1.508 g": (100 * 0.03) / 1.508,
    "volatile matter of 1.508 g": (100 * (1.478 - 1.068)) / 1.508,
    "volatile fraction of 1.478 g": (1.478 - 1.068) / 1.478,
    "10 % of moisture for 2 %, 12 of ash": (12 * (100 - 10)) / (100 - 2),
    "hydrogen of 6 with 8 % of moisture": (100 * (6 - 8 * hydrogenInWater)) / (100 - 8),
    "oxygen of 45 with 8 % of moisture": (100 * (45 - 8 * (1 - hydrogenInWater))) / (100 - 8),
    "0.76 dry with 5 % of ash, ash-free": 0.76 / (1 - 0.05),
    "drift 2 min into 5 of 0.002 to 0.006 g": 31.5 - (0.002 + (2 / 5) * 0.004),
  }),
);
