/** Words for what a cell that shows nothing waits for. */
export const waitWords = {
  blank: (name: string, cell: string): string => `${name} (${cell}) is blank`,
  shows: (name: string, cell: string, shown: string): string => `${name} (${cell}) shows ${shown}`,
} as const;
