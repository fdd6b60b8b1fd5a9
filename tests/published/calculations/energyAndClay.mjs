// Heating values in per cents, the heat of drying, several groups of results, clay and slip: each by another road than the product's.

/** MJ/kg of Channiwala and Parikh, mass per cent of the dry sample. */
const channiwala = (C, H, O, N, S, A) => 0.3491 * C + 1.1783 * H + 0.1005 * S - 0.1034 * O - 0.0151 * N - 0.0211 * A;
const sheng = (C, H, A) => -1.3675 + 0.3137 * C + 0.7009 * H + 0.0318 * (100 - C - H - A);
/** J/g at constant pressure of ISO 18125. */
const net = (gross, H, O, N, M) => (gross - 212.2 * H - 0.8 * (O + N)) * (1 - 0.01 * M) - 24.43 * M;

/** kJ to dry wood, its own heat added up degree by degree. */
function drying(dry, water, from, to, tin = 0, heat = 0) {
  const steps = 10000;
  const width = (to - from) / steps;
  let sum = 0;
  for (let step = 0; step < steps; step++) {
    const celsius = from + (step + 0.5) * width;
    sum += dry * (0.1031 + 0.003867 * (celsius + 273.15)) * width + tin * heat * width;
  }
  return (sum + water * (4.18 * (Math.min(to, 100) - from) + 2257 + 2.439 * Math.max(0, 100 - to))) / 1000;
}

const mean = (values) => values.reduce((sum, value) => sum + value, 0) / values.length;
const squares = (values) => values.reduce((sum, value) => sum + (value - mean(values)) ** 2, 0);

/** Welch's F and its second degrees of freedom, as in Biometrika 38 (1951) 330, equations by sums over v = s^2 / n. */
function welch(groups) {
  const k = groups.length;
  const v = groups.map((group) => squares(group) / (group.length - 1) / group.length);
  const w = v.map((one) => 1 / one);
  const all = w.reduce((sum, one) => sum + one, 0);
  const centre = groups.reduce((sum, group, index) => sum + w[index] * mean(group), 0) / all;
  const lack = groups.reduce((sum, group, index) => sum + (1 - w[index] / all) ** 2 / (group.length - 1), 0);
  const over = groups.reduce((sum, group, index) => sum + w[index] * (mean(group) - centre) ** 2, 0) / (k - 1);
  return { ratio: over / (1 + (2 * (k - 2) * lack) / (k ** 2 - 1)), within: (k ** 2 - 1) / (3 * lack) };
}

/** Chance that F is exceeded, by integrating its density in v = F / (1 + F) with the trapezium rule on a fine grid. */
function exceeded(ratio, between, within) {
  const steps = 400000;
  const scale = between / within;
  const density = (share) => share ** (between / 2 - 1) * (1 - share) ** (within / 2 - 1);
  const integral = (from, to) => {
    // Substituted twice over, so that ends where the density is not finite do no harm.
    let sum = 0;
    for (let step = 0; step < steps; step++) {
      const t = (step + 0.5) / steps;
      const share = from + (to - from) * t * t * (3 - 2 * t);
      sum += density(share) * (to - from) * 6 * t * (1 - t);
    }
    return sum / steps;
  };
  const at = (scale * ratio) / (1 + scale * ratio);
  const above = integral(at, 1);
  return above / (above + integral(0, at));
}

const kilns = [
  [28.1, 28.4, 27.9],
  [30.2, 30.9, 31.1],
  [29.0, 31.5, 27.2, 30.1],
];
const threeKilns = welch(kilns);

console.log(
  JSON.stringify({
    "red oak, Channiwala and Parikh": channiwala(49.96, 5.92, 43.77, 0.03, 0.01, 0.31),
    "coconut shell, Channiwala and Parikh": channiwala(50.2, 5.7, 43.4, 0, 0, 0.7),
    "red oak, Boie": 0.3517 * 49.96 + 1.1626 * 5.92 + 0.1047 * 0.01 - 0.111 * 43.77 + 0.0628 * 0.03,
    "red oak, Milne": 0.341 * 49.96 + 1.322 * 5.92 + 0.0686 * 0.01 - 0.0153 * 0.31 - 0.12 * (43.77 + 0.03),
    "red oak, Dulong": 0.3383 * 49.96 + 1.443 * (5.92 - 43.77 / 8) + 0.0942 * 0.01,
    "red oak, Sheng and Azevedo": sheng(49.96, 5.92, 0.31),
    "red oak, Parikh and others": 0.3536 * 13.47 + 0.1559 * 86.22 - 0.0078 * 0.31,
    "net, dry": net(20000, 6, 43, 0.1, 0) / 1000,
    "net, 10 % of moisture": net(20000, 6, 43, 0.1, 10) / 1000,
    "net, 50 % of moisture": net(20000, 6, 43, 0.1, 50) / 1000,
    "4 g of water and 6 g of wood, 20 to 105 degC": drying(6, 4, 20, 105),
    "the same to 60 degC": drying(6, 4, 20, 60),
    "the same to 105 degC in a tin": drying(6, 4, 20, 105, 50, 0.49),
    "Welch's F of three kilns": threeKilns.ratio,
    "its degrees of freedom": threeKilns.within,
    "its p": exceeded(threeKilns.ratio, 2, threeKilns.within),
    "p of F 1.18046237 with 4 and 20": exceeded(1.18046237440255, 4, 20),
    "solids of 1740 g/L, grains of 2600": (1740 - 1000) / (1 - 1000 / 2600) / 1740,
    "volume lost by 12 % of length": 1 - 0.88 * 0.88 * 0.88,
    "6.1 g of water in 152.4 g": 6.1 / 152.4,
  }),
);
