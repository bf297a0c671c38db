import type { Decides } from '#shared-calc/cautions/deciders.ts';
import type { Warning } from '#shared-calc/cautions/warning.ts';
import { loadOf, USUAL_GAUGE_KPA, USUAL_OVEN_W, type LeafTreatment } from './leaf-treatment.ts';
import { ABOVE_SMALL_VESSEL, SMALL_VESSEL_KPA } from './steam-temp.ts';
import type { TreatmentStep } from './treatment-steps.ts';
import { dryingMinutes, wetLoad } from './wet-load.ts';

const KW = 1000;
const TWO_THIRDS = 2 / 3;
const VESSEL: Decides = 'Whoever services the vessel';
const heated: ReadonlySet<TreatmentStep['name']> = new Set(['vent', 'come up', 'hold']);

/** What may go wrong with one batch: the vessel boils dry or is too full, its gauge too high, or the leaves stay wet. */
export function treatmentWarnings(treatment: LeafTreatment, batchL: number, steps: readonly TreatmentStep[]) {
  if (treatment.way === 'steam') return [...ofVessel(treatment), ...boilsDry(treatment, steps)];
  return treatment.way === 'bake' ? staysWet(treatment, batchL) : [];
}

function ofVessel(treatment: LeafTreatment): readonly Warning[] {
  const gauge = treatment.gaugeKpa ?? USUAL_GAUGE_KPA;
  const { fill } = loadOf(treatment);
  return [
    ...(gauge > SMALL_VESSEL_KPA ? [{ says: ABOVE_SMALL_VESSEL, decides: VESSEL }] : []),
    ...(fill > TWO_THIRDS + 1e-9
      ? [{ says: 'Fuller than two thirds: loose leaves block the vent.', decides: VESSEL }]
      : []),
  ];
}

/** Water boils off from the venting to the end of the hold; at full power the vessel must outlast them. */
function boilsDry(treatment: LeafTreatment, steps: readonly TreatmentStep[]): readonly Warning[] {
  const { steamWaterL, steamPowerKw } = treatment;
  const decides = VESSEL;
  if (steamWaterL === undefined || steamPowerKw === undefined) {
    return [{ says: `Whether it boils dry is not known yet: give the ${lacking(treatment)} of the vessel.`, decides }];
  }
  const minutes = steps.reduce((sum, step) => sum + (heated.has(step.name) ? step.minutes : 0), 0);
  const watts = steamPowerKw * KW;
  const lasts = dryingMinutes({ waterKg: steamWaterL }, watts);
  if (lasts > minutes) return [];
  const least = (steamWaterL * minutes) / lasts;
  const litres = (Math.floor(least * 10) + 1) / 10;
  return [
    {
      says: `Dry after ${Math.floor(lasts)} of ${minutes} min: turn down once at pressure, or ${litres} L.`,
      decides,
    },
  ];
}

function lacking({ steamWaterL, steamPowerKw }: Pick<LeafTreatment, 'steamWaterL' | 'steamPowerKw'>): string {
  return [...(steamWaterL === undefined ? ['water'] : []), ...(steamPowerKw === undefined ? ['power'] : [])].join(
    ' and the ',
  );
}

/** In an open tray wet leaves stay near the wet bulb until their water has left. */
function staysWet(
  { moistened = false, open = false, ovenPowerW = USUAL_OVEN_W }: LeafTreatment,
  batchL: number,
): readonly Warning[] {
  const load = wetLoad(batchL, moistened);
  if (!open || load.waterKg === 0) return [];
  const minutes = Math.round(dryingMinutes(load, ovenPowerW));
  return [
    {
      says: `Wet leaves in an open tray: the core stays cool, near the wet bulb, for about ${minutes} min. Cover the tray; a core probe decides.`,
      decides: 'Grower',
    },
  ];
}
