/** The factors of ISO 16993 and ISO 1170, table 1, as printed, in percent; ash on the basis that is left. */
export const BASIS_FACTORS: Readonly<Record<string, (received: number, analysed: number, dryAsh: number) => number>> = {
  "as analysed to as received": (received, analysed) => (100 - received) / (100 - analysed),
  "as analysed to dry": (_received, analysed) => 100 / (100 - analysed),
  "as analysed to ash-free": (_received, analysed, dryAsh) => 100 / (100 - analysed - (dryAsh * (100 - analysed)) / 100),
  "as received to as analysed": (received, analysed) => (100 - analysed) / (100 - received),
  "as received to dry": (received) => 100 / (100 - received),
  "as received to ash-free": (received, _analysed, dryAsh) => 100 / (100 - received - (dryAsh * (100 - received)) / 100),
  "dry to as analysed": (_received, analysed) => (100 - analysed) / 100,
  "dry to as received": (received) => (100 - received) / 100,
  "dry to ash-free": (_received, _analysed, dryAsh) => 100 / (100 - dryAsh),
  "ash-free to as analysed": (_received, analysed, dryAsh) => (100 - analysed - (dryAsh * (100 - analysed)) / 100) / 100,
  "ash-free to as received": (received, _analysed, dryAsh) => (100 - received - (dryAsh * (100 - received)) / 100) / 100,
  "ash-free to dry": (_received, _analysed, dryAsh) => (100 - dryAsh) / 100,
};
