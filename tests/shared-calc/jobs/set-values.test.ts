import { describe, expect, test } from 'vitest';
import { workedJob } from '#tests/worked-job.ts';
import { setValues, type ValuesSet } from '#shared-calc/jobs/set-values.ts';
import { isEmptyChange } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { after, faultOf, jobOf, libraryJob, valueOf, written } from './demo-jobs.ts';

const job = 'J02';
const set = (writings: ValuesSet['writings']): ValuesSet => ({ job, writings, by: 'client' });

describe('setValues', () => {
  test('a whole-job value holds in every size, one of a size goes before it', () => {
    const records = written(
      libraryJob({
        sizes: [
          { tank: 'T05', count: 1 },
          { tank: 'T07', count: 1 },
        ],
      }),
      'us',
      {
        litter: '20 mm',
        'T07.litter': '10 mm',
      },
    );
    const { bench } = workedJob(records, jobOf(records, job), DEMO_DAY);
    const boxes = ['T05', 'T07'].map((column) => bench.box(column, 'litter'));
    expect(boxes.map(({ value, state }) => [value, state])).toEqual([
      [0.02, 'job'],
      [0.01, 'local'],
    ]);
  });

  test('whoever writes a box last is named; the same text again changes nothing', () => {
    const first = written(libraryJob(), 'client', { litter: '20 mm' });
    expect(byOf(written(first, 'us', { litter: '25 mm' }))).toBe('us');
    expect(isEmptyChange(valueOf(setValues(first, { ...set([{ line: 'litter', text: '20 mm' }]), by: 'us' })))).toBe(
      true,
    );
  });

  test('no text brings a box back to the house, an empty one is a missing figure', () => {
    const first = written(libraryJob(), 'client', { litter: '20 mm' });
    const back = valueOf(setValues(first, set([{ line: 'litter', text: undefined }])));
    expect([back.label, back.removed.map(({ record }) => record.id)]).toEqual([
      'J02: litter back to the house',
      ['J02.litter'],
    ]);
    const missing = after(first, setValues(first, set([{ line: 'litter', text: '' }])));
    expect(missing.localValue.get('J02.litter')?.text).toBe('');
  });

  test.each<[string, ValuesSet, string]>([
    [
      'a line nobody knows',
      set([{ line: 'drain_gpa', text: '9 mm' }]),
      'Nothing called drain_gpa. Did you mean drain_gap?',
    ],
    [
      'a size the job has not',
      set([{ column: 'T08', line: 'litter', text: '9 mm' }]),
      'No size T08 in this job. Sizes: T05.',
    ],
    [
      'a wrong unit',
      set([{ line: 'litter', text: '9 L' }]),
      'litter=9 L: This line is a length in mm. 9 L is a volume. (at 1)',
    ],
    [
      'a kit that is not one',
      set([{ line: 'kit', text: 'ful' }]),
      'kit=ful: kit takes basic, full or show. You gave ful. Did you mean full?',
    ],
    ['a job nobody knows', { ...set([]), job: 'J09' }, 'No job called J09. Jobs: J01, J02.'],
  ])('%s is refused, with its cure', (_, asked, says) => {
    const fault = faultOf(setValues(libraryJob(), asked));
    expect(fault && sayJobFault(fault)).toBe(says);
  });

  test('a cycle is refused, told from the box that closed it', () => {
    const fault = faultOf(
      setValues(libraryJob(), set([{ line: 'litter', text: 'litter_dry / floor_area / litter_density' }])),
    );
    expect(fault && sayJobFault(fault)).toBe(
      'litter=litter_dry / floor_area / litter_density: This box depends on itself: litter -> litter_dry -> litter.',
    );
  });

  test('a cycle is found though the job has no size yet', () => {
    const records = libraryJob({ sizes: [] });
    expect(faultOf(setValues(records, set([{ line: 'litter', text: 'litter_over_dam' }])))?.kind).toBe('loop');
  });
});

function byOf(records: Records): string | undefined {
  return records.localValue.get('J02.litter')?.by;
}
