const twoDigits = (number: number): string => String(number).padStart(2, "0");

/** The day where the program runs, in the order that sorts and that no country reads otherwise: "2025-03-09". */
export const dayOf = (now: Date): string => `${now.getFullYear()}-${twoDigits(now.getMonth() + 1)}-${twoDigits(now.getDate())}`;

export const today = (): string => dayOf(new Date());
