import { cautionsBlock, paragraph, type PaperBlock, type PaperDocument } from './document.ts';
import type { MakePaper } from './paper-input.ts';
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
    document: treatmentDocument({ way, aim, leavesL, plan: plan.value }, workshop),
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
  workshop: Pick<Workshop, 'altitudeM' | 'decimalComma'>,
): PaperDocument {
  const card = treatmentCard(way, plan);
  const { batches, batchMinutes, temperature } = plan;
  const number = (value: number) => writeNumber(value, 2, workshop);
  const blocks: readonly PaperBlock[] = [
    paragraph(
      `${number(leavesL)} L of leaves, ${wayWords[way]}, aim ${aim}. ${number(temperature)} °C${workshop.altitudeM === undefined ? '' : ` at ${workshop.altitudeM} m`}; ${batches} ${batches === 1 ? 'batch' : 'batches'} of ${batchMinutes} min. Somebody stays by it from the first minute to the last.`,
    ),
    {
      is: 'table',
      head: ['part', 'minutes', 'over at minute'],
      rows: card.steps.map(({ name, minutes, over }) => [name, String(minutes), String(over)]),
      right: [1, 2],
      boxes: Array.from({ length: card.batches }, (_, nth) => `Batch ${nth + 1}`),
    },
    cautionsBlock([...card.warnings.map((warning) => ({ ...warning, about: way })), ...card.cautions]),
    { is: 'sign', items: ['Core at its hottest, °C, each batch', 'Treated by', 'Day'] },
  ];
  return { title: 'Leaf treatment', blocks };
}
