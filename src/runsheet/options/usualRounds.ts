/**
 * Rounds and the minutes between them where nothing is said, on the page and by the command alike: so many keep up to three samples of a char
 * on two pages. Own choice, no source.
 */
export const USUAL_ROUNDS = { weighIns: 8, intervalMinutes: 20 } as const;
