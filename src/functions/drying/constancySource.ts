/** Where the limits and criteria of constant weight come from. */
export const CONSTANCY_SOURCE =
  "EN 322 and EN 13183-1 (0.1 % of the mass), ISO 18134-1 (0.2 % of the total loss, from memory), ASTM D4442 method A (two display steps), ASTM D3302 (per hour), pharmacopoeias (mg, mg per g). A limit met exactly counts as met. Check your edition.";
