/** What a message is about: the words before its first colon; "" where there are none. */
export const namedIn = (message: string): string => /^([^:]+): /.exec(message)?.[1] ?? "";
