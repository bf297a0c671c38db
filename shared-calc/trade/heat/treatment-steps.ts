import { comeUpMinutes } from './come-up-time.ts';
import type { Refusal } from '#shared-calc/trade/first-refusal.ts';
import { leafHeating } from './leaf-heating.ts';
import { USUAL_GAUGE_KPA, USUAL_OVEN_C, type LeafTreatment } from './leaf-treatment.ts';
import { sayPlain } from '#shared-calc/trade/say-plain.ts';
import { steamHoldMinutes, WRAPPED_GOODS } from './steam-hold.ts';
import { steamTemperatureC } from './steam-temp.ts';
import { refused } from '#shared-calc/trade/trade-function.ts';

export interface TreatmentStep {
  readonly name: 'heat' | 'vent' | 'come up' | 'hold' | 'release' | 'drain' | 'cool';
  readonly minutes: number;
}

/** One batch: minutes of each part, not yet rounded, and the degC of steam, water or oven. */
export interface TreatmentSchedule {
  readonly steps: readonly TreatmentStep[];
  readonly temperature: number;
  readonly reference: string;
}

const LEAST_BOIL_C = 90;
const HOTTEST_OVEN_C = 120;

export function treatmentSteps(treatment: LeafTreatment): TreatmentSchedule | Refusal {
  switch (treatment.way) {
    case 'steam':
      return steam(treatment.altitudeM, treatment.gaugeKpa ?? USUAL_GAUGE_KPA);
    case 'boil':
      return boil(treatment.altitudeM);
    case 'bake':
      return bake(treatment.ovenC ?? USUAL_OVEN_C);
  }
}

function steam(altitude: number, gauge: number): TreatmentSchedule | Refusal {
  const temperature = steamTemperatureC(altitude, gauge);
  if (typeof temperature !== 'number') return temperature;
  const comeUp = comeUpMinutes(leafHeating('steam', temperature));
  const hold = steamHoldMinutes(altitude, gauge);
  if (typeof comeUp !== 'number') return comeUp;
  if (typeof hold !== 'number') return hold;
  const steps = [step('heat', 15), step('vent', 10), step('come up', comeUp), step('hold', hold), step('release', 25)];
  return { steps, temperature, reference: WRAPPED_GOODS.says };
}

function boil(altitude: number): TreatmentSchedule | Refusal {
  const temperature = steamTemperatureC(altitude, 0);
  if (typeof temperature !== 'number') return temperature;
  if (temperature < LEAST_BOIL_C) return refused(boilsTooCool(temperature));
  const steps = [step('come up', 20), step('hold', 15), step('drain', 15)];
  return { steps, temperature, reference: '15 min of boiling water (common practice)' };
}

function bake(oven: number): TreatmentSchedule | Refusal {
  if (oven > HOTTEST_OVEN_C) return refused(`Leaves can scorch or catch fire; ${HOTTEST_OVEN_C} C is the limit here.`);
  const comeUp = comeUpMinutes(leafHeating('bake', oven));
  if (typeof comeUp !== 'number') return comeUp;
  const steps = [step('come up', comeUp), step('hold', 30), step('cool', 15)];
  return { steps, temperature: oven, reference: '30 min with the core at 90 degC (common practice)' };
}

function boilsTooCool(temperature: number): string {
  return `Water boils at ${sayPlain(temperature)} C here; boiling leaves needs ${LEAST_BOIL_C} C or more. Bake or steam them.`;
}

function step(name: TreatmentStep['name'], minutes: number): TreatmentStep {
  return { name, minutes };
}
