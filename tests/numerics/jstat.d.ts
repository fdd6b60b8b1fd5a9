/** The part of the general statistics library jStat that serves as a second opinion. */
declare module "jstat" {
  interface Distribution {
    pdf(x: number, ...parameters: number[]): number;
    cdf(x: number, ...parameters: number[]): number;
    inv(probability: number, ...parameters: number[]): number;
  }
  export const jStat: {
    readonly normal: Distribution;
    readonly studentt: Distribution;
    readonly centralF: Distribution;
    mean(values: readonly number[]): number;
    /** @param sample true for n - 1 */
    stdev(values: readonly number[], sample: boolean): number;
    /** Studentized range; parameters: number of means, degrees of freedom. */
    readonly tukey: Distribution;
  };
}
