import type { CellFunction } from "./cellFunction";
import { airLeftFunction } from "./furnace/airLeftFunction";
import { atomicRatioFunction } from "./furnace/atomicRatioFunction";
import { boilingPointWaterFunction } from "./furnace/boilingPointWaterFunction";
import { gasVolumeFunction } from "./furnace/gasVolumeFunction";
import { heatingRateFunction } from "./furnace/heatingRateFunction";
import { roomPpmFunction } from "./furnace/roomPpmFunction";
import { scheduleTimeFunction } from "./furnace/scheduleTimeFunction";
import { severityFunction } from "./furnace/severityFunction";
import { temperatureCorrectedFunction } from "./furnace/temperatureCorrectedFunction";
import { ventDiameterFunction } from "./furnace/ventDiameterFunction";

/** The furnace itself: its programme and temperatures, and the gas that leaves what is heated in it. */
export const furnace: readonly CellFunction[] = [
  gasVolumeFunction,
  airLeftFunction,
  ventDiameterFunction,
  scheduleTimeFunction,
  heatingRateFunction,
  severityFunction,
  atomicRatioFunction,
  temperatureCorrectedFunction,
  boilingPointWaterFunction,
  roomPpmFunction,
];
