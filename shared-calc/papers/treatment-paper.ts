import { unitWords } from '#shared-calc/quantity/unit-words.ts';
import { shownUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { shownUnitWords } from '#shared-calc/quantity/figure-words.ts';
import { sayAllFigures, sayFigures } from '#shared-calc/quantity/said-figures.ts';
import { cautionsBlock, paragraph, type PaperBlock, type PaperDocument } from './document.ts';
import { displayFor, type MakePaper } from './paper-input.ts';
import { leavesOf } from '#shared-calc/prepare/leaves-of.ts';
import { treatmentCard } from './treatment-card.ts';
import { treatLeaves, waysSideBySide } from '#shared-calc/prepare/treat-leaves.ts';
import { cleanNoise, writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import type { TreatmentPlan } from '#shared-calc/trade/heat/leaf-treat-time.ts';
import type { TreatmentAim, TreatmentWay } from '#shared-calc/trade/heat/leaf-treatment.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok } from '#shared-calc/result.ts';

const wayWords = { steam: 'pressure steam', boil: 'boiled', bake: 'baked' } as const;

/** One way of treating the leaves of an order; by default the suggested way. */
export const treatmentPaper: MakePaper = (input) => {
  const leavesL = leavesOf(input.bench);
  if (leavesL === undefined) return failed({ kind: 'no-leaves' });
  const workshop = workshopOf(input.records);
  const { aim, way: asked } = input.treatment;
  const ways = waysSideBySide({ aim, leavesL, moistened: false }, workshop);
  const way = asked ?? ways.find(({ suggested }) => suggested)?.way ?? 'steam';
  const plan = treatLeaves({ way, aim, leavesL }, workshop);
  if (!plan.ok) return failed({ kind: 'refused', says: plan.fault });
  const card = treatmentCard(way, plan.value);
  const { batchMinutes, temperature } = plan.value;
  return ok({
    data: { ...card, aim, leavesL, temperature: cleanNoise(temperature), batchMinutes },
    document: treatmentDocument({ way, aim, leavesL, plan: plan.value }, { workshop, display: displayFor(input) }),
  });
};

export interface PlannedTreatment {
  readonly way: TreatmentWay;
  readonly aim: TreatmentAim;
  /** Loose litres. */
  readonly leavesL: number;
  readonly plan: TreatmentPlan;
}

/** One way of treating leaves, batch by batch, to stand by. */
export function treatmentDocument(
  { way, aim, leavesL, plan }: PlannedTreatment,
  { workshop, display }: { readonly workshop: Pick<Workshop, 'altitudeM' | 'decimalComma'>; readonly display: Display },
): PaperDocument {
  const card = treatmentCard(way, plan);
  const { batches, batchMinutes, temperature } = plan;
  const amount = (value: number, unit: string) =>
    shownUnit(unit, display) === unit
      ? `${writeNumber(value, 2, workshop)} ${unitWords(unit, '')}`
      : sayFigures(`${value.toFixed(2)} ${unit}`, display);
  const height = workshop.altitudeM === undefined ? '' : ` at ${sayFigures(`${workshop.altitudeM} m`, display)}`;
  const blocks: readonly PaperBlock[] = [
    paragraph(
      `${amount(leavesL, 'L')} of leaves, ${wayWords[way]}, aim ${aim}. ${amount(temperature, 'degC')}${height}; ${batches} ${batches === 1 ? 'batch' : 'batches'} of ${batchMinutes} min. Somebody stays by it from the first minute to the last.`,
    ),
    {
      is: 'table',
      head: ['part', 'minutes', 'over at minute'],
      rows: card.steps.map(({ name, minutes, over }) => [name, String(minutes), String(over)]),
      right: [1, 2],
      boxes: Array.from({ length: card.batches }, (_, nth) => `Batch ${nth + 1}`),
    },
    cautionsBlock([
      ...card.warnings.map(({ says, decides }) => ({ says: sayAllFigures(says, display), decides, about: way })),
      ...card.cautions,
    ]),
    { is: 'sign', items: [`Core at its hottest, ${shownUnitWords('degC', display)}, each batch`, 'Treated by', 'Day'] },
  ];
  return { title: 'Leaf treatment', blocks };
}
