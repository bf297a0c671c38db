import { BAKED_CORE_C, heatTargets, HOTTEST_OVEN_C, LEAST_BOIL_C } from '#shared-calc/trade/heat-targets.ts';
import { sayPlain } from '#shared-calc/trade/say-plain.ts';
import { refused } from '#shared-calc/trade/trade-function.ts';
import type { Refusal } from '#shared-calc/trade/first-refusal.ts';
import { comeUpMinutes, type ComeUp } from './come-up-time.ts';
import { leafHeating } from './leaf-heating.ts';
import { USUAL_GAUGE_KPA, USUAL_OVEN_C, USUAL_OVEN_W, type LeafTreatment } from './leaf-treatment.ts';
import { CORE_BELOW_STEAM_K, steamHoldMinutes } from './steam-hold.ts';
import { steamTemperatureC } from './steam-temp.ts';
import { warmingMinutes, wetLoad } from './wet-load.ts';

export interface TreatmentStep {
  readonly name: 'heat' | 'vent' | 'come up' | 'hold' | 'release' | 'drain' | 'cool';
  readonly minutes: number;
}

/** One batch: minutes of each part, not yet rounded, and the degC of steam, water or oven. */
export interface TreatmentSchedule {
  readonly steps: readonly TreatmentStep[];
  readonly temperature: number;
  readonly reference: string;
  /** How the core follows its steam or oven; a pot is timed from when it boils. */
  readonly core?: ComeUp;
}

/** The parts of a batch of so many loose litres. */
export function treatmentSteps(treatment: LeafTreatment, batchL: number): TreatmentSchedule | Refusal {
  switch (treatment.way) {
    case 'steam':
      return steam(treatment);
    case 'boil':
      return boil(treatment.altitudeM);
    case 'bake':
      return bake(treatment, batchL);
  }
}

function steam({ aim, altitudeM, gaugeKpa = USUAL_GAUGE_KPA }: LeafTreatment): TreatmentSchedule | Refusal {
  const temperature = steamTemperatureC(altitudeM, gaugeKpa);
  if (typeof temperature !== 'number') return temperature;
  const sterile = aim === 'sterile';
  const { steamed, sterileSteam } = heatTargets;
  const hold = sterile ? steamHoldMinutes(altitudeM, gaugeKpa) : steamed.minutes;
  if (typeof hold !== 'number') return hold;
  const core = leafHeating('steam', temperature, sterile ? temperature - CORE_BELOW_STEAM_K : steamed.coreC);
  const comeUp = comeUpMinutes(core);
  if (typeof comeUp !== 'number') return comeUp;
  const steps = [step('heat', 15), step('vent', 10), step('come up', comeUp), step('hold', hold)];
  return {
    steps: gaugeKpa > 0 ? [...steps, step('release', 25)] : steps,
    temperature,
    reference: (sterile ? sterileSteam : steamed).says,
    core,
  };
}

function boil(altitude: number): TreatmentSchedule | Refusal {
  const temperature = steamTemperatureC(altitude, 0);
  if (typeof temperature !== 'number') return temperature;
  if (temperature < LEAST_BOIL_C) return refused(boilsTooCool(temperature));
  const steps = [step('come up', 20), step('hold', 15), step('drain', 15)];
  return { steps, temperature, reference: '15 min of boiling water (common practice)' };
}

function bake(
  { ovenC = USUAL_OVEN_C, ovenPowerW = USUAL_OVEN_W, moistened = false }: LeafTreatment,
  batchL: number,
): TreatmentSchedule | Refusal {
  if (ovenC > HOTTEST_OVEN_C) return refused(`Leaves can scorch or catch fire; ${HOTTEST_OVEN_C} C is the limit here.`);
  if (!(ovenPowerW > 0)) return refused('The power of the oven must be more than zero.');
  const byProbe = leafHeating('bake', ovenC, BAKED_CORE_C);
  const probed = comeUpMinutes(byProbe);
  if (typeof probed !== 'number') return probed;
  const warmed = warmingMinutes(wetLoad(batchL, moistened), BAKED_CORE_C - byProbe.start, ovenPowerW);
  const slower = Math.max(1, warmed / probed);
  const steps = [step('come up', probed * slower), step('hold', 30), step('cool', 15)];
  return {
    steps,
    temperature: ovenC,
    reference: `30 min with the core at ${BAKED_CORE_C} degC (common practice)`,
    core: { ...byProbe, tenfold: byProbe.tenfold * slower },
  };
}

function boilsTooCool(temperature: number): string {
  return `Water boils at ${sayPlain(temperature)} C here; boiling leaves needs ${LEAST_BOIL_C} C or more. Bake or steam them.`;
}

function step(name: TreatmentStep['name'], minutes: number): TreatmentStep {
  return { name, minutes };
}
