/** 0 degC in kelvin, exact by definition of the Celsius scale (SI brochure). */
export const zeroCelsius = 273.15;
