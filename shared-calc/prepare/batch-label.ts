import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import type { Records, TreatmentBatch } from '#shared-calc/records/records.ts';
import { sayPlainDate } from './say-day.ts';

const ways = { steam: 'pressure steam', boil: 'boiled', bake: 'baked' } as const;

/** The text on the bag of a treated batch: leaves, count, place collected, day, way and its aim, hottest core. */
export function batchLabel(batch: TreatmentBatch, records: Pick<Records, 'material'>): readonly string[] {
  const label = records.material.get(batch.material)?.label ?? batch.material;
  const hottest = batch.log.length > 0 ? Math.max(...batch.log.map(([, degC]) => degC)) : undefined;
  return [
    label,
    `${cleanNoise(batch.litres)} L loose`,
    batch.collectedAt === '' ? 'Collected: not written down' : `Collected: ${batch.collectedAt}`,
    `Treated ${sayPlainDate(batch.on)}: ${ways[batch.way]}, aim ${batch.aim}`,
    hottest === undefined ? 'Core: not measured' : `Core: ${cleanNoise(hottest)} degC at its hottest`,
    ...(batch.note === '' ? [] : [batch.note]),
  ];
}
