/** An option as it is typed: "--moist-grams" of moistGrams. */
export const optionTyped = (option: string): string => `--${option.replace(/[A-Z]/g, (capital) => `-${capital.toLowerCase()}`)}`;
