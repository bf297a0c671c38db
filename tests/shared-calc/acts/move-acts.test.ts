import { describe, expect, test } from 'vitest';
import { moveJob } from '#shared-calc/acts/move-acts.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { faultJson } from '#shared-calc/words/say-act-fault.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { faultOf, jobOf, libraryJob } from '#tests/shared-calc/jobs/demo-jobs.ts';
import { done, refused } from './do-act.ts';

function paidJob(): Records {
  return done(libraryJob(), 'recordDeposit', { job: 'J02', coins: 65_000, on: DEMO_DAY }).records;
}

const reason = { anyway: 'The client brings the rest on Friday', who: 'R-builder' };

describe('moveJob', () => {
  test.each(['built', 'watching', 'handed over'])('to %s it is refused while something stands against it', (state) => {
    const fault = faultOf(moveJob.run(derive(paidJob(), DEMO_DAY), { job: 'J02', state }));
    const said = fault && faultJson(fault);
    expect(said?.kind).toBe('stands-against');
    expect(said?.says).toMatch(/^Something stands against J02 being .* To go on, give a reason and who decides\.$/);
    expect(said?.against?.map(({ what }) => what)).toContain('quote');
  });

  test('with a reason and who decides it goes on, and both are kept with what stood against it', () => {
    const { records, label } = done(paidJob(), 'moveJob', { job: 'J02', state: 'built', ...reason });
    expect([label, jobOf(records, 'J02').state]).toEqual(['J02 built, its materials out of the Store', 'built']);
    const [kept] = records.done.values();
    expect({ ...kept, against: kept?.against.map(({ what }) => what).slice(0, 2) }).toEqual({
      id: 'D-0001',
      on: DEMO_DAY,
      step: 'built',
      who: 'R-builder',
      job: 'J02',
      against: ['goods', 'quote'],
      note: reason.anyway,
    });
    const next = done(records, 'moveJob', { job: 'J02', state: 'watching', ...reason }).records;
    expect([...next.done.keys()]).toEqual(['D-0001', 'D-0002']);
  });

  test('an earlier move goes on without them, and keeps them where both are given', () => {
    const bare = done(libraryJob(), 'moveJob', { job: 'J02', state: 'accepted' }).records;
    const kept = done(libraryJob(), 'moveJob', { job: 'J02', state: 'accepted', ...reason }).records;
    expect([[...bare.done.values()], [...kept.done.values()].map(({ step }) => step)]).toEqual([[], ['accepted']]);
  });

  test('where nothing stands against a move, there is no reason to keep', () => {
    expect([...done(paidJob(), 'moveJob', { job: 'J02', state: 'enquiry', ...reason }).records.done]).toEqual([]);
  });

  test('a job without its deposit goes no further, whatever the reason', () => {
    expect(refused(libraryJob(), 'moveJob', { job: 'J02', state: 'built', ...reason })).toBe(
      'J02 cannot be built: its deposit is not in. Record it with its day, or accept the quote first.',
    );
  });

  test.each([
    [{ anyway: 'Friday' }, 'Say who decides it, such as R-builder.'],
    [{ who: 'R-builder' }, 'Give the reason why it is done all the same.'],
    [{ who: 'R-builder', anyway: '  ' }, 'Give the reason why it is done all the same.'],
    [{ who: 'R-bilder', anyway: 'Friday' }, 'There is no rate R-bilder. Did you mean R-builder?'],
  ])('half a reason is refused: %j', (given, says) => {
    expect(refused(paidJob(), 'moveJob', { job: 'J02', state: 'built', ...given })).toBe(says);
  });
});
