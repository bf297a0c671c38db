import { treatActs } from '#shared-calc/cautions/acts.ts';
import { sayCaution, type CautionId, type FillFigure, type SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import { DRY_EXTRA_K, HOTTEST_OVEN_C } from '#shared-calc/trade/heat-targets.ts';
import type { LeafTreatment } from './leaf-treatment.ts';

const limits: Partial<Record<Parameters<FillFigure>[0], string>> = {
  hottestOven: `${HOTTEST_OVEN_C} degC`,
  dryExtra: `${DRY_EXTRA_K} K`,
};

/** The cautions of this treatment, those of the way first. */
export function treatmentCautions({ way, aim }: Pick<LeafTreatment, 'way' | 'aim'>): readonly SaidCaution[] {
  const ids: readonly CautionId[] = [
    ...treatActs[way].cautions,
    aim === 'clean' ? 'cleanIsEnough' : 'neverPromise',
    'collecting',
    'collectedKinds',
  ];
  return ids.map((id) => sayCaution(id, (figure) => limits[figure]));
}
