// Gas, openings, programmes and char ratios, each from its definition.

const litres = (grams, molar, celsius, pascals = 101325) => ((grams / molar) * 8.314462618 * (celsius + 273.15) * 1000) / pascals;

/** Millimetres of a sharp-edged hole that passes a flow in m3/s at a rise in Pa. */
const hole = (flow, rise, density) => 2000 * Math.sqrt(flow / (0.61 * Math.sqrt((2 * rise) / density)) / Math.PI);

/** log10 of minutes times e^((T - 100) / 14.75). */
const severity = (celsius, minutes) => Math.log10(minutes) + (celsius - 100) / 14.75 / Math.LN10;

/** The same of a ramp, summed over many short holds. */
function rampSeverity(from, to, rate) {
  const steps = 200000;
  const width = (to - from) / steps;
  let sum = 0;
  for (let step = 0; step < steps; step++) sum += (width / rate) * Math.exp((from + (step + 0.5) * width - 100) / 14.75);
  return Math.log10(sum);
}

const ratio = (element, weight, carbon) => element / weight / (carbon / 12.011);

/** Slope of the least-squares line and its standard error. */
function line(x, y) {
  const n = x.length;
  const [sx, sy] = [x, y].map((values) => values.reduce((total, value) => total + value, 0));
  const sxx = x.reduce((total, value) => total + value * value, 0);
  const sxy = x.reduce((total, value, index) => total + value * y[index], 0);
  const slope = (n * sxy - sx * sy) / (n * sxx - sx * sx);
  const intercept = (sy - slope * sx) / n;
  const squares = y.reduce((total, value, index) => total + (value - intercept - slope * x[index]) ** 2, 0);
  return { slope, error: Math.sqrt(squares / (n - 2) / (sxx - (sx * sx) / n)) };
}

const kiln = line([0, 10, 20, 30, 40, 50], [20, 50.2, 80.1, 109.8, 140.3, 169.9]);

/** ppm in a mixed room, followed in short steps. */
function room(gramsPerHour, molar, cubicMetres, changes, minutes) {
  const steps = 100000;
  const hours = minutes / 60 / steps;
  let grams = 0;
  for (let step = 0; step < steps; step++) {
    const middle = grams + (gramsPerHour - changes * grams) * (hours / 2);
    grams += (gramsPerHour - changes * middle) * hours;
  }
  return ((grams / molar) * 24.4654 * 1e6) / (cubicMetres * 1000);
}

console.log(
  JSON.stringify({
    "1 g of steam at 100 degC": litres(1, 18.015, 100),
    "7.5 g of 35.1 g/mol at 500 degC": litres(7.5, 35.1, 500),
    "the same at 90 kPa": litres(7.5, 35.1, 500, 90000),
    "air left after 5 volumes": Math.exp(-5),
    "air left after ln(20.95) volumes": 1 / 20.95,
    "hole for 13.56 L in 300 s": hole(0.01356 / 300, 10, 0.553),
    "hole for four times that": hole((4 * 0.01356) / 300, 10, 0.553),
    "hole at 30.38 Pa": hole(0.0135561223 / 300, 30.3808406252, 0.553251),
    "severity of 225 degC, 13 min": severity(225, 13),
    "severity of 450 degC, 30 min": severity(450, 30),
    "severity of a ramp from 100 to 450 at 10": rampSeverity(100, 450, 10),
    "H/C of char": ratio(0.0228, 1.008, 0.9119),
    "O/C of char": ratio(0.0365, 15.999, 0.9119),
    "H/C of pine": ratio(0.0613, 1.008, 0.4877),
    "O/C of pine": ratio(0.4069, 15.999, 0.4877),
    "slope of six readings": kiln.slope,
    "standard error of the slope": kiln.error,
    "100 to 600 between two points": 419.527 + ((450 - 422) * (660.323 - 419.527)) / (664 - 422),
    "1 g of CO in a closed room of 30 m3": room(1, 28.01, 30, 0, 60),
    "1 g/h of CO, half a change an hour, 60 min": room(1, 28.01, 30, 0.5, 60),
  }),
);
