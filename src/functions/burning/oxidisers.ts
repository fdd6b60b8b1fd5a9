/** For formulas that may carry their own oxygen. */
export const OXIDISERS =
  "Oxygen to spare (a negative demand, O2 on the right) can mark an oxidiser: with anything that burns it can catch fire or explode. Nitro compounds, azides and peroxides can explode whatever the answer. Do not heat them. Follow your local rules; ask a qualified person.";
