/** Put in place by the build, from package.json. */
declare const RETORT_VERSION: string | undefined;

/** The version of this add-in, "0.1.0"; outside a build, the words that say so. */
export const VERSION: string = typeof RETORT_VERSION === "string" ? RETORT_VERSION : "unreleased source";
