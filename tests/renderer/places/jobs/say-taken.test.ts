import { describe, expect, test } from 'vitest';
import { sayTaken } from '#renderer/places/jobs/say-taken.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { standsOf } from '#tests/shared-calc/buy/lots.ts';
import { done, refused } from '#tests/shared-calc/acts/do-act.ts';
import { jobOf, libraryJob } from '#tests/shared-calc/jobs/demo-jobs.ts';

const reason = { anyway: 'The rest is brought on the day', who: 'R-builder' };
const paid = () => done(libraryJob(), 'recordDeposit', { job: 'J02', coins: 65_000, on: '2027-03-10' }).records;

describe('sayTaken', () => {
  test('a job without its deposit is not moved past it, and is told why', () => {
    expect(refused(libraryJob(), 'moveJob', { job: 'J02', state: 'ordered' })).toBe(
      'J02 cannot be ordered: its deposit is not in. Record it with its day, or accept the quote first.',
    );
  });

  test('a job that is built takes what it uses out of the Store, and says what was not there', () => {
    const built = done(paid(), 'moveJob', { job: 'J02', state: 'built', ...reason }).records;
    expect([jobOf(built, 'J02').state, standsOf(built, 'M01', '2027-03-10')]).toEqual(['built', 0]);
    expect(sayTaken(derive(paid(), '2027-03-10'), { job: 'J02', state: 'built', ...reason })).toBe(
      'The Store had not all of it: 1 of Rectangle 600 × 445 × 600, 2.82\u00a0L of Expanded clay 8-16 mm, 0.505\u00a0m of Barrier mesh, 1.2 m wide, 1.2 mm and 19 more came from elsewhere.',
    );
    expect(sayTaken(derive(paid(), '2027-03-10'), { job: 'J02', state: 'ordered' })).toBe('');
  });
});
