/** The last caution of every guide. */
export const DEFER =
  "Retort only calculates. Follow your local fire, gas and workplace codes first, and leave kilns, vents, flues and ducts to licensed practice.";
