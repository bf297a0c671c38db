import { describe, expect, test } from 'vitest';
import { jobSummary } from '#shared-calc/jobs/job-summary.ts';
import { readSizes } from '#shared-calc/jobs/read-sizes.ts';
import { setSizes } from '#shared-calc/jobs/set-sizes.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';
import { after, faultOf, jobOf, libraryJob, valueOf, withRecords, written } from './demo-jobs.ts';

describe('setSizes', () => {
  test('a tank that stays keeps its local values, one that goes takes them with it', () => {
    const before = written(
      libraryJob({
        sizes: [
          { tank: 'T05', count: 1 },
          { tank: 'T07', count: 1 },
        ],
      }),
      'client',
      {
        'T05.litter': '20 mm',
        'T07.litter': '10 mm',
      },
    );
    const records = after(
      before,
      setSizes(before, 'J02', [
        { tank: 'T08', count: 1 },
        { tank: 'T07', count: 3 },
      ]),
    );
    expect(jobSummary(records, jobOf(records, 'J02')).sizes).toEqual(['T08', 'T07x3']);
    expect([...records.localValue.keys()]).toEqual(['J02.soil_rise', 'J02-T07.litter']);
  });

  test('a second size of a tank has its own record, and the first stays the first', () => {
    const before = libraryJob();
    const twice = after(
      before,
      setSizes(before, 'J02', [
        { tank: 'T05', count: 1 },
        { tank: 'T05', count: 2 },
      ]),
    );
    expect([...twice.size.values()].filter((size) => size.job === 'J02').map(({ id, count }) => [id, count])).toEqual([
      ['J02-T05', 1],
      ['J02-T05-2', 2],
    ]);
  });

  test('a size that something was measured of stays', () => {
    const records = withRecords(libraryJob(), 'actual', [
      { id: 'A1', job: 'J02', size: 'J02-T05', line: 'plant_work', value: 80, unit: 'min', on: '2027-04-01', note: '' },
    ]);
    const fault = faultOf(setSizes(records, 'J02', []));
    expect(fault && sayJobFault(fault)).toBe('J02-T05 stays: what it took has been written down for it.');
  });
});

describe('readSizes', () => {
  test('tanks with how often each is built', () => {
    expect(valueOf(readSizes('T03, T07x2', demoRecords()))).toEqual([
      { tank: 'T03', count: 1 },
      { tank: 'T07', count: 2 },
    ]);
  });

  test.each([
    ['T99', 'No tank called T99 in the tank book. Did you mean T09?'],
    ['T07x0', 'T07: build a size 1 to 999 times.'],
    ['T03,,T07', '"" is no size. Write T03, or T07x2 to build it twice.'],
  ])('%s is refused', (text, says) => {
    const fault = faultOf(readSizes(text, demoRecords()));
    expect(fault && sayJobFault(fault)).toBe(says);
  });
});
