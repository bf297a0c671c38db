import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import type { Records, TreatmentBatch } from '#shared-calc/records/records.ts';
import { givenWords } from './given-words.ts';
import { sayPlainDate } from './say-day.ts';

const ways = { steam: 'pressure steam', boil: 'boiled', bake: 'baked' } as const;

/** The text on the bag of a treated batch: leaves, count, place collected, day, way and its aim, hottest core. */
export function batchLabel(
  batch: TreatmentBatch,
  { records, display }: { readonly records: Pick<Records, 'material'>; readonly display: Display },
): readonly string[] {
  const label = records.material.get(batch.material)?.label ?? batch.material;
  const given = (value: number, unit: string) =>
    givenWords(toBase(value, unitOf(unit)), unit, display).replace('\u00a0', ' ');
  const hottest = batch.log.length > 0 ? Math.max(...batch.log.map(([, degC]) => degC)) : undefined;
  return [
    label,
    `${given(batch.litres, 'L')} loose`,
    batch.collectedAt === '' ? 'Collected: not written down' : `Collected: ${batch.collectedAt}`,
    `Treated ${sayPlainDate(batch.on, display)}: ${ways[batch.way]}, aim ${batch.aim}`,
    hottest === undefined ? 'Core: not measured' : `Core: ${given(hottest, 'degC')} at its hottest`,
    ...(batch.note === '' ? [] : [batch.note]),
  ];
}
