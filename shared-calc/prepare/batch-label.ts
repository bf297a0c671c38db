import { givenWords } from '#shared-calc/quantity/figure-words.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import type { Records, TreatmentBatch } from '#shared-calc/records/records.ts';
import { sayPlainDate } from './say-day.ts';

const ways = { steam: 'pressure steam', boil: 'boiled', bake: 'baked' } as const;

/** The text on the bag of a treated batch: leaves, count, place collected, day, way and its aim, hottest core. */
export function batchLabel(
  batch: TreatmentBatch,
  { records, display }: { readonly records: Pick<Records, 'material'>; readonly display: Display },
): readonly string[] {
  const label = records.material.get(batch.material)?.label ?? batch.material;
  const hottest = batch.log.length > 0 ? Math.max(...batch.log.map(([, degC]) => degC)) : undefined;
  return [
    label,
    `${givenWords(toBase(batch.litres, unitOf('L')), 'L', display)} loose`,
    batch.collectedAt === '' ? 'Collected: not written down' : `Collected: ${batch.collectedAt}`,
    `Treated ${sayPlainDate(batch.on, display)}: ${ways[batch.way]}, aim ${batch.aim}`,
    hottest === undefined ? 'Core: not measured' : `Core: ${givenWords(toBase(hottest, unitOf('degC')), 'degC', display)} at its hottest`,
    ...(batch.note === '' ? [] : [batch.note]),
  ];
}
