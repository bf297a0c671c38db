import { describe, expect, test } from 'vitest';
import { moveJob } from '#shared-calc/jobs/move-job.ts';
import { jobSummary } from '#shared-calc/jobs/job-summary.ts';
import { setNextAct } from '#shared-calc/jobs/next-act.ts';
import { recordDeposit } from '#shared-calc/jobs/record-deposit.ts';
import { stock } from '#shared-calc/buy/ledger.ts';
import { done } from '#tests/shared-calc/acts/do-act.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { after, faultOf, jobOf, libraryJob, valueOf, withRecords } from './demo-jobs.ts';

describe('moveJob', () => {
  test('a job moves on, past states it does not need, and what is to be done next moves with it', () => {
    const records = libraryJob();
    const planned = after(records, setNextAct(records, 'J02', 'Measure the door', '2027-03-12'));
    expect([jobOf(planned, 'J02').nextAct, jobOf(planned, 'J02').nextOn]).toEqual(['Measure the door', '2027-03-12']);
    const moved = after(planned, moveJob(planned, 'J02', 'accepted'));
    expect(jobSummary(moved, jobOf(moved, 'J02'))).toEqual({
      job: 'J02',
      title: 'Reading room',
      state: 'accepted',
      sizes: ['T05'],
      handover: undefined,
    });
    expect([jobOf(moved, 'J02').nextAct, jobOf(moved, 'J02').nextOn]).toEqual(['Take the deposit', undefined]);
  });

  test('a step back is allowed, and its label says so', () => {
    expect(valueOf(moveJob(at('accepted'), 'J02', 'surveyed')).label).toBe('J02 back from accepted to surveyed');
  });

  test.each<[Job['state'], string, string]>([
    [
      'enquiry',
      'deposit in',
      'J02 cannot be deposit in: its deposit is not in. Record it with its day, or accept the quote first.',
    ],
    [
      'accepted',
      'ordered',
      'J02 cannot be ordered: its deposit is not in. Record it with its day, or accept the quote first.',
    ],
    [
      'closed',
      'built',
      'J02 cannot be built: its deposit is not in. Record it with its day, or accept the quote first.',
    ],
    ['quoted', 'quoted', 'J02 is quoted already.'],
    [
      'quoted',
      'acepted',
      'No state called acepted. Did you mean accepted? States: enquiry, surveyed, quoted, accepted, deposit in, ordered, in quarantine, ready to build, built, watching, handed over, in service, closed.',
    ],
  ])('from %s to %s is refused', (from, to, says) => {
    const fault = faultOf(moveJob(at(from), 'J02', to));
    expect(fault && sayJobFault(fault)).toBe(says);
  });

  test.each<[Job['state'], Job['state']]>([
    ['accepted', 'deposit in'],
    ['deposit in', 'ordered'],
    ['in service', 'built'],
    ['enquiry', 'closed'],
    ['closed', 'enquiry'],
  ])('from %s to %s is allowed', (from, to) => {
    const records = at(from);
    expect(jobOf(after(records, moveJob(records, 'J02', to)), 'J02').state).toBe(to);
  });

  test('with a deposit on record any state may follow', () => {
    const records = libraryJob();
    const paid = after(records, recordDeposit(records, { job: 'J02', coins: 64_500, on: DEMO_DAY }));
    const back = after(paid, moveJob(paid, 'J02', 'enquiry'));
    expect(jobOf(after(back, moveJob(back, 'J02', 'built')), 'J02').state).toBe('built');
  });

  test('what the Store kept for a job is free again when the job is closed', () => {
    const records = libraryJob();
    const kept = done(records, 'keepStock', { job: 'J02', of: 'M05', amount: 6 }).records;
    const closed = done(kept, 'moveJob', { job: 'J02', state: 'closed' }).records;
    const free = (of: Records) => stock(of, 'M05', { asked: DEMO_DAY }).free;
    expect([free(records), free(kept), free(closed)]).toEqual([6, 0, 6]);
  });
});

describe('recordDeposit', () => {
  test('it is recorded with its day, and the job is deposit in', () => {
    const records = at('accepted');
    const change = recordDeposit(records, { job: 'J02', coins: 65_000, on: '2027-03-15' });
    expect(valueOf(change).label).toBe('J02: deposit 650.00 on 2027-03-15');
    const { state, depositCoins, depositOn, nextAct } = jobOf(after(records, change), 'J02');
    expect([state, depositCoins, depositOn, nextAct]).toEqual([
      'deposit in',
      65_000,
      '2027-03-15',
      'Order on the next shopping run',
    ]);
  });

  test('a job that is further on stays where it is', () => {
    const records = at('ordered');
    expect(jobOf(after(records, recordDeposit(records, { job: 'J02', coins: 1, on: DEMO_DAY })), 'J02').state).toBe(
      'ordered',
    );
  });

  test.each([
    [0, DEMO_DAY, 'not-an-amount'],
    [-5, DEMO_DAY, 'not-an-amount'],
    [0.5, DEMO_DAY, 'not-an-amount'],
    [500, '2027-13-01', 'not-a-day'],
  ])('%s coins on %s is refused', (coins, on, kind) => {
    expect(faultOf(recordDeposit(libraryJob(), { job: 'J02', coins, on }))?.kind).toBe(kind);
  });
});

function at(state: Job['state']): Records {
  const records = libraryJob();
  return withRecords(records, 'job', [{ ...jobOf(records, 'J02'), state }]);
}
