/** Words of the sheet as a whole. Units stand in brackets after the quantity. */
export const sheetWords = {
  title: { drying: "Run sheet: drying", charring: "Run sheet: drying and charring", ashing: "Run sheet: drying, charring and ashing" },
  sheetName: { drying: "Drying run", charring: "Charring run", ashing: "Ashing run" },
  purpose: {
    drying: "Dry a weighed sample to constant weight and read off its moisture.",
    charring: "Dry a weighed sample to constant weight, char it without air, and read off what left as vapour and what stayed as char.",
    ashing: "Dry a weighed sample to constant weight, char it without air, burn the char to ash, and read off each share.",
  },
  legend: {
    input: "Boxed: for you to fill in",
    computed: "Plain: calculated; stays empty until its inputs are there",
  },
  cautions: "Cautions",
  unnamedVessel: "vessel",
  sample: (number: number): string => `Sample ${number}`,
  workings: {
    results: "Working: for results and checks",
    weighIns: "Working: for chart and table",
    sample: (number: number): string => `Working, sample ${number}`,
  },
  chart: { title: "Drying", x: "Elapsed (min)", y: "Sample (g)" },
} as const;
