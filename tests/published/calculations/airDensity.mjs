// Density of moist air in kg/m3 by three published formulas, typed out apart from the program.

/** A. Picard, R. S. Davis, M. Glaeser, K. Fujii, Metrologia 45 (2008) 149, with 400 ppm of CO2; degC, Pa, 0 to 1. */
function cipm2007(celsius, pascals, humidity) {
  const T = celsius + 273.15;
  const saturation = Math.exp(1.2378847e-5 * T ** 2 - 1.9121316e-2 * T + 33.93711047 - 6.3431645e3 / T);
  const enhancement = 1.00062 + 3.14e-8 * pascals + 5.6e-7 * celsius ** 2;
  const x = (humidity * enhancement * saturation) / pascals;
  const first =
    1.58123e-6 - 2.9331e-8 * celsius + 1.1043e-10 * celsius ** 2 + (5.707e-6 - 2.051e-8 * celsius) * x + (1.9898e-4 - 2.376e-6 * celsius) * x ** 2;
  const Z = 1 - (pascals / T) * first + (pascals / T) ** 2 * (1.83e-11 - 0.765e-8 * x ** 2);
  const dry = 28.96546e-3;
  return ((pascals * dry) / (Z * 8.314472 * T)) * (1 - x * (1 - 18.01528e-3 / dry));
}

/** OIML R 111-1, equation E.3-1, formula from memory; degC, mbar, per cent. */
const oiml = (celsius, mbar, percent) => (0.34848 * mbar - 0.009 * percent * Math.exp(0.061 * celsius)) / (273.15 + celsius);

/** NPL guidance note on buoyancy correction; degC, mbar, per cent. */
const npl = (celsius, mbar, percent) => (0.348444 * mbar - percent * (0.00252 * celsius - 0.020582)) / (273.15 + celsius);

console.log(
  JSON.stringify({
    "CIPM-2007 at 20, 101325, 0.5": cipm2007(20, 101325, 0.5),
    "CIPM-2007 at 25, 101325, 0.5": cipm2007(25, 101325, 0.5),
    "CIPM-2007 at 23, 95000, 0.4": cipm2007(23, 95000, 0.4),
    "CIPM-2007 at 20, 101325, 0": cipm2007(20, 101325, 0),
    "OIML at 20, 1013.25, 50": oiml(20, 1013.25, 50),
    "OIML at 28, 1013.25, 50": oiml(28, 1013.25, 50),
    "NPL at 20, 1013.25, 50": npl(20, 1013.25, 50),
  }),
);
