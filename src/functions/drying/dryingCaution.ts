/** Said with everything that has a sample dried in an oven and weighed. */
export const DRYING_CAUTION =
  "Weigh cold: hot vessels burn, and a warm one reads light. Never oven-dry what is wet with solvent: its vapour can ignite. Salts with water of crystallisation lose that too. Follow your local rules.";
