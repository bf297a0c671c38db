import { paragraph, stepCautionsBlock, type PaperBlock } from './document.ts';
import { displayFor, type MakePaper, type PaperInput } from './paper-input.ts';
import { sizeFigures } from '#shared-calc/prepare/size-figures.ts';
import { treatmentCard } from './treatment-card.ts';
import { treatLeaves, waysSideBySide } from '#shared-calc/prepare/treat-leaves.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { cleanNoise, writeNumber } from '#shared-calc/quantity/write-figure.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok } from '#shared-calc/result.ts';

export const wayWords = { steam: 'pressure steam', boil: 'boiled', bake: 'baked' } as const;

/** One way of treating the leaves of an order; by default the suggested way. */
export const treatmentPaper: MakePaper = (input) => {
  const leavesL = leavesOf(input);
  if (leavesL === undefined) return failed({ kind: 'no-leaves' });
  const workshop = workshopOf(input.records);
  const { aim, way: asked } = input.treatment;
  const ways = waysSideBySide({ aim, leavesL, moistened: false }, workshop);
  const way = asked ?? ways.find(({ suggested }) => suggested)?.way ?? 'steam';
  const plan = treatLeaves({ way, aim, leavesL }, workshop);
  if (!plan.ok) return failed({ kind: 'refused', says: plan.fault });
  const card = treatmentCard(way, plan.value);
  const { batches, batchMinutes, temperature } = plan.value;
  const number = (value: number) => writeNumber(value, 2, displayFor(input));
  const blocks: readonly PaperBlock[] = [
    paragraph(
      `${number(leavesL)} L of leaves, ${wayWords[way]}, aim ${aim}. ${number(temperature)} °C at ${workshop.altitudeM} m; ${batches} ${batches === 1 ? 'batch' : 'batches'} of ${batchMinutes} min. Somebody stays by it from the first minute to the last.`,
    ),
    {
      is: 'table',
      head: ['part', 'minutes', 'over at minute'],
      rows: card.steps.map(({ name, minutes, over }) => [name, String(minutes), String(over)]),
      right: [1, 2],
    },
    ...card.beside.map(paragraph),
    stepCautionsBlock([
      ...card.warnings.map(({ says, decides }) => ({ step: way, caution: says, decides })),
      ...card.cautions,
    ]),
  ];
  return ok({
    data: { ...card, aim, leavesL, temperature: cleanNoise(temperature), batchMinutes },
    document: { title: 'Leaf treatment', blocks },
  });
};

/** Loose litres of leaves of all builds; `undefined` if a figure is not known or the recipe has none. */
function leavesOf({ bench }: PaperInput): number | undefined {
  let litres = 0;
  for (const { key, count } of bench.input().columns) {
    const each = sizeFigures(bench, key, plainDisplay).number('leavesLoose', 'L');
    if (each === undefined) return undefined;
    litres += each * count;
  }
  return litres > 0 ? cleanNoise(litres) : undefined;
}
