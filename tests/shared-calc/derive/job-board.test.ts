import { describe, expect, test } from 'vitest';
import { boardByDay, boardByState, type BoardGroup } from '#shared-calc/derive/job-board.ts';
import { setNextAct } from '#shared-calc/jobs/next-act.ts';
import { recordDeposit } from '#shared-calc/jobs/record-deposit.ts';
import { moveJob } from '#shared-calc/jobs/move-job.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { dueOf } from '#shared-calc/derive/today.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { after, libraryJob } from '#tests/shared-calc/jobs/demo-jobs.ts';

const today = '2027-03-10';
const factsOf = (records: Records) => ({ records, today, items: dueOf(derive(records, today)) });
const listed = (groups: readonly BoardGroup[]) =>
  groups.map(({ title, rows }) => [title, rows.map(({ job }) => job.id)]);

describe('boardByState', () => {
  test('jobs stand under their state, states in the order of a job', () => {
    const records = libraryJob();
    const paid = after(records, recordDeposit(records, { job: 'J02', coins: 65_000, on: today }));
    expect(listed(boardByState(factsOf(paid)))).toEqual([
      ['enquiry', ['J01']],
      ['deposit in', ['J02']],
    ]);
  });

  test('within a state the act that is due first stands first, and one that is past its day is late', () => {
    const records = libraryJob();
    const dated = after(records, setNextAct(records, 'J02', 'Measure the shelf', '2027-03-09'));
    const [enquiries] = boardByState(factsOf(dated));
    expect(enquiries?.rows.map(({ job, late, sizes }) => [job.id, late, sizes])).toEqual([
      ['J02', true, 'T05'],
      ['J01', false, 'T03, T07, T08'],
    ]);
  });

  test('a job says whether the shopping run may take it', () => {
    const records = libraryJob();
    const paid = after(records, recordDeposit(records, { job: 'J02', coins: 65_000, on: today }));
    expect(boardByState(factsOf(paid)).flatMap(({ rows }) => rows.map(({ gateOpen }) => gateOpen))).toEqual([
      false,
      true,
    ]);
  });
});

describe('boardByDay', () => {
  test.each([
    ['2027-03-09', 'Late'],
    ['2027-03-10', 'Today'],
    ['2027-03-17', 'Within a week'],
    ['2027-03-18', 'Later'],
    [undefined, 'Nothing to do now'],
  ])('an act by %s stands under %s', (day, group) => {
    const records = libraryJob();
    const surveyed = after(records, moveJob(records, 'J02', 'surveyed'));
    const dated = after(surveyed, setNextAct(surveyed, 'J02', 'Ring', day));
    expect(boardByDay(factsOf(dated)).find(({ rows }) => rows.some(({ job }) => job.id === 'J02'))?.title).toBe(group);
  });

  test('a closed job is never late', () => {
    const records = libraryJob();
    const dated = after(records, setNextAct(records, 'J02', 'Ring', '2027-03-01'));
    const closed = after(dated, moveJob(dated, 'J02', 'closed'));
    expect(listed(boardByDay(factsOf(closed)))).toEqual([
      ['Nothing to do now', ['J01']],
      ['Closed', ['J02']],
    ]);
  });
});
