import { describe, expect, test } from 'vitest';
import { useSaidWhole } from './said-whole.ts';

describe('what is printed of today', () => {
  const { said } = useSaidWhole('2027-03-08');

  test('what is overdue and of the day, what decides said; with days what comes until then, too', async () => {
    expect(await said('today', '--on', '2027-03-08')).toEqual(['Nothing to do.']);
    await said('job', 'new', '--title', 'Reading room', '--sizes', 'T05', '--handover', '2027-04-28');
    await said('job', 'state', 'J02', 'accepted');
    await said('job', 'deposit', 'J02', '645.00', '--on', '2027-03-08');
    await said('tub', 'start', 'C1', '--on', '2027-03-01');
    expect(await said('today', '--on', '2027-03-08')).toEqual([
      'day         what     for  who       late    why',
      '----------  -------  ---  --------  ----    ---------------------------------------------------------',
      '2027-03-08  feed K1       R-grower          White springtail, started on Monday 1 March, every 7 days',
    ]);
    expect(await said('today', '--on', '2027-03-10', '--days', '7')).toEqual([
      'day         what          for  who        late                  why',
      '----------  ------------  ---  ---------  -----------  -------  ---------------------------------------------------------',
      '2027-03-08  feed K1            R-grower   2 days late           White springtail, started on Monday 1 March, every 7 days',
      '2027-03-10  order plants  J02  R-builder               decides  Build on Thursday 15 April, handover on Thursday 6 May',
    ]);
  });

  test('days that are no count are refused', async () => {
    expect(await said('today', '--days', 'some')).toEqual(['! --days some: give whole days, as 7.']);
  });
});
