import { describe, expect, test } from 'vitest';
import { jobsToStock, kindDemands } from '#shared-calc/derive/kind-demands.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { busyBook } from '#tests/renderer/places/prepare/busy-book.ts';

const derived = derive(busyBook(), DEMO_DAY);

function demandsOf(id: string) {
  const kind = derived.records.cultureKind.get(id);
  if (!kind) throw new Error(id);
  return kindDemands(derived, kind).demands.map(({ job, date, animals }) => [job, date, animals]);
}

describe('kindDemands', () => {
  test('paid jobs that are still to be built ask for springtails on their build day', () => {
    // 2,658 springtails a m2: T05 0.267 m2, T07 0.4005 and two T03 of 0.198, T08 0.72; each build up to the whole.
    // J04 was paid in February, but nothing of it is ordered: its plants come from today on, as those of J02.
    expect(demandsOf('C1')).toEqual([
      ['J02', '2027-04-15', 710],
      ['J04', '2027-04-15', 1914],
      ['J03', '2027-05-24', 1065 + 2 * 527],
    ]);
  });

  test('isopods go by the starter animals of a build, ten a tank', () => {
    expect(demandsOf('C3').map(([job, , animals]) => [job, animals])).toEqual([
      ['J02', 10],
      ['J04', 10],
      ['J03', 30],
    ]);
  });

  test('one that stands with its client and one that is closed ask for nothing', () => {
    expect(jobsToStock(derived).planned.map(({ job }) => job.id)).toEqual(['J02', 'J03', 'J04']);
  });
});
