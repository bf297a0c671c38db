import { describe, expect, test } from 'vitest';
import { useSaidWhole } from './said-whole.ts';

describe('what is printed of steps done', () => {
  const { said } = useSaidWhole('2027-03-08');

  test('a background is glued: the entry, the day in the plan, and nothing once it is undone', async () => {
    await said('job', 'new', '--title', 'Reading room', '--sizes', 'T05', '--handover', '2027-04-28');
    await said('job', 'state', 'J02', 'accepted');
    await said('job', 'deposit', 'J02', '645.00', '--on', '2027-02-22');
    const did = ['did', '--job', 'J02', '--step', 'panel', '--ends', '--on', '2027-03-31'];
    expect(await said(...did, '--minutes', '90', '--name', 'Mara')).toEqual([
      'day         for  step   who        name  took',
      '----------  ---  -----  ---------  ----  ------  ----',
      '2027-03-31  J02  panel  R-builder  Mara  90 min  over',
    ]);
    const plan = await said('prepare', '--job', 'J02', '--on', '2027-04-01');
    expect(plan.find((row) => row.startsWith('panel'))).toBe('panel                        2027-03-31  done');
  });

  test('readings come in the units of the workshop, and one that is none is refused', async () => {
    expect(
      await said(
        'did',
        '--job',
        'J02',
        '--step',
        'care',
        '--on',
        '2027-03-08',
        '--low',
        '70 degF',
        '--deaths',
        '0',
        '--eating',
        'yes',
      ),
    ).toEqual([
      'day         for  step  who        name  took',
      '----------  ---  ----  ---------  ----  ----',
      '2027-03-08  J02  care  R-builder',
    ]);
    expect(await said('did', '--job', 'J02', '--step', 'care', '--low', 'warm')).toEqual([
      '! --low warm: give a figure, as "21 degC".',
    ]);
    expect(await said('did', '--job', 'J02', '--step', 'care', '--eating', 'some')).toEqual([
      '! --eating some: yes or no.',
    ]);
  });

  test('without leaves in July the build waits for October', async () => {
    await said('store', 'count', 'M15', '0 g', '--on', '2027-07-01');
    const wish = ['--handover', '2027-09-01', '--deposit', '2027-07-01', '--on', '2027-07-01'];
    expect(await said('prepare', '--sizes', 'T05', ...wish)).toContain(
      '54 days late because of leaf season: the handover moves from Wednesday 1 September to Monday 25 October.',
    );
  });
});
