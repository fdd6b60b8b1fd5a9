import { EDITION } from "../../chemistry/atomicWeights";

export const WEIGHTS_SOURCE = `Atomic weights ${EDITION}: Prohaska et al., Pure Appl. Chem. 94 (2022) 573, table 1, doi 10.1515/pac-2019-0603; the abridged value where the standard is an interval. Isotopes: AME 2020, from memory.`;
