import { describe, expect, test } from 'vitest';
import { newJob, type NewJob } from '#shared-calc/jobs/new-job.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';
import { DEMO_DAY, demoRecords } from '#tests/demo-bench.ts';
import { faultOf, jobOf, libraryJob, valueOf, withRecords } from './demo-jobs.ts';

const enquiry: NewJob = { title: ' Lobby ', recipe: 'H2', sizes: [], writings: [], by: 'client', on: DEMO_DAY };

describe('newJob', () => {
  test('an enquiry has its sizes, and what the client wants is written as the client’s', () => {
    const records = libraryJob({
      sizes: [
        { tank: 'T07', count: 2 },
        { tank: 'T05', count: 1 },
        { tank: 'T07', count: 1 },
      ],
      writings: [
        { line: 'kit', text: 'basic' },
        { column: 'T07#2', line: 'litter', text: '20 mm' },
      ],
      handover: '2027-04-28',
    });
    const { id, title, state, enquiredOn, handover, nextAct } = jobOf(records, 'J02');
    expect([id, title, state, enquiredOn, handover, nextAct]).toEqual([
      'J02',
      'Reading room',
      'enquiry',
      DEMO_DAY,
      '2027-04-28',
      'Survey the site',
    ]);
    expect([...records.size.values()].filter((size) => size.job === 'J02')).toEqual([
      { id: 'J02-T07', job: 'J02', tank: 'T07', order: 1, label: '', count: 2 },
      { id: 'J02-T05', job: 'J02', tank: 'T05', order: 2, label: '', count: 1 },
      { id: 'J02-T07-2', job: 'J02', tank: 'T07', order: 3, label: '', count: 1 },
    ]);
    expect([...records.localValue.values()]).toEqual([
      { id: 'J02.kit', job: 'J02', line: 'kit', text: 'basic', note: '', by: 'client' },
      { id: 'J02-T07-2.litter', job: 'J02', size: 'J02-T07-2', line: 'litter', text: '20 mm', note: '', by: 'client' },
    ]);
  });

  test('an enquiry may have no size yet; its title is trimmed and its label names it', () => {
    const { job, change } = valueOf(newJob(demoRecords(), enquiry));
    expect([job, change.label, change.added.map(({ kind }) => kind)]).toEqual(['J02', 'J02: new job, Lobby', ['job']]);
  });

  test('the next id comes after the highest, whatever is closed between', () => {
    const records = demoRecords();
    const far = withRecords(records, 'job', [{ ...jobOf(records, 'J01'), id: 'J41', state: 'closed' }]);
    expect(valueOf(newJob(far, enquiry)).job).toBe('J42');
    const { job, change } = valueOf(newJob(far, enquiry));
    expect(valueOf(newJob(applyChange(far, change), enquiry)).job).not.toBe(job);
  });

  test.each<[string, Partial<NewJob>, string]>([
    ['without a title', { title: ' ' }, 'A job needs a title.'],
    ['an unknown recipe', { recipe: 'H9' }, 'No recipe called H9. Recipes: H1, H2, H3, H4.'],
    [
      'an unknown tank',
      { sizes: [{ tank: 'T77', count: 1 }] },
      'No tank called T77 in the tank book. Did you mean T07?',
    ],
    ['none built', { sizes: [{ tank: 'T07', count: 0 }] }, 'T07: build a size 1 to 999 times.'],
    ['a handover that is no day', { handover: '2027-02-30' }, 'There is no 2027-02-30 in the calendar.'],
    ['a handover in another form', { handover: '28 April' }, '28 April is no day: write it as 2026-11-25.'],
    ['an unknown line', { writings: [{ line: 'liter', text: '2 mm' }] }, 'Nothing called liter. Did you mean litter?'],
  ])('%s is refused', (_, asked, says) => {
    const fault = faultOf(newJob(demoRecords(), { ...enquiry, ...asked }));
    expect(fault && sayJobFault(fault)).toBe(says);
  });
});
