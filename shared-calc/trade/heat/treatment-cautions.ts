import type { Caution } from '#shared-calc/trade/caution.ts';
import { DRY_EXTRA_K, HOTTEST_OVEN_C } from '#shared-calc/trade/heat-targets.ts';
import { loadOf, USUAL_GAUGE_KPA, type LeafTreatment } from './leaf-treatment.ts';
import { ABOVE_SMALL_VESSEL, SMALL_VESSEL_KPA } from './steam-temp.ts';

const GROWER = 'Grower';
const PLATE = "Vessel maker's plate";
const TWO_THIRDS = 2 / 3;

const collected: Caution = {
  says: 'Collect only where the owner of the land allows it and nothing is sprayed, away from roads; no oleander, yew, laurel cherry, walnut or conifer.',
  decides: GROWER,
};
const clean: Caution = { says: 'Clean is enough: a living tank is not sterile.', decides: GROWER };
const promise: Caution = { says: "Never promise 'sterile' on a quote.", decides: GROWER };

const inSteam: readonly Caution[] = [
  {
    says: 'Only with vented steam and a core probe: vent 10 min first, as trapped air makes it cooler.',
    decides: PLATE,
  },
  { says: 'Leaves in a cloth bag that lets steam through, on a rack, two thirds full at most.', decides: PLATE },
  { says: "Water to the vessel's plate, checked every batch; valve checked yearly.", decides: PLATE },
  { says: 'Never force it open; open only at zero gauge.', decides: PLATE },
];
const inOven: readonly Caution[] = [
  { says: `Bake attended, at ${HOTTEST_OVEN_C} C or less, the tray covered.`, decides: GROWER },
  { says: `Moisten the leaves 16 h before; dry ones need up to ${DRY_EXTRA_K} C more.`, decides: GROWER },
];

/** The cautions of this treatment, those of the way first. */
export function treatmentCautions(treatment: LeafTreatment): readonly Caution[] {
  const ofWay = { steam: inSteam, boil: [], bake: inOven }[treatment.way];
  return [...ofWay, ...ofSteamSettings(treatment), treatment.aim === 'clean' ? clean : promise, collected];
}

function ofSteamSettings(treatment: LeafTreatment): readonly Caution[] {
  if (treatment.way !== 'steam') return [];
  const gauge = treatment.gaugeKpa ?? USUAL_GAUGE_KPA;
  const { fill } = loadOf(treatment);
  return [
    ...(gauge > SMALL_VESSEL_KPA ? [{ says: ABOVE_SMALL_VESSEL, decides: PLATE }] : []),
    ...(fill > TWO_THIRDS + 1e-9
      ? [{ says: 'Fuller than two thirds: loose leaves block the vent.', decides: PLATE }]
      : []),
  ];
}
