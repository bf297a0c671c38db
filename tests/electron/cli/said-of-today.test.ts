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
    expect(await said('today', '--on', '2027-03-08')).toEqual([]);
    expect(await said('today', '--on', '2027-03-10', '--days', '7')).toEqual([]);
  });

  test('days that are no count are refused', async () => {
    expect(await said('today', '--days', 'some')).toEqual(['! --days some: give whole days, as 7.']);
  });
});
