import { BOIL_OFF_KJ_PER_KG, minutesOf, WATER_KJ_PER_KG_K } from './wet-heat-up.ts';

/** Loose dry leaves as laid, g/L, and the water that 1 kg of them takes up in 16 h; both from memory. */
const LOOSE_G_PER_L = 12.2;
const WATER_PER_DRY = 1.9;
const DRY_KJ_PER_KG_K = 1.7;

/** One load of an oven, kg. */
export interface WetLoad {
  readonly dryKg: number;
  readonly waterKg: number;
}

export function wetLoad(litres: number, moistened: boolean): WetLoad {
  const dryKg = (litres * LOOSE_G_PER_L) / 1000;
  return { dryKg, waterKg: moistened ? dryKg * WATER_PER_DRY : 0 };
}

/** Minutes in which the oven's power alone warms the load by so many K. */
export function warmingMinutes({ dryKg, waterKg }: WetLoad, kelvin: number, watts: number): number {
  return minutesOf((dryKg * DRY_KJ_PER_KG_K + waterKg * WATER_KJ_PER_KG_K) * kelvin, watts);
}

/** Minutes in which all water of the load boils off. */
export function dryingMinutes({ waterKg }: Pick<WetLoad, 'waterKg'>, watts: number): number {
  return minutesOf(waterKg * BOIL_OFF_KJ_PER_KG, watts);
}
