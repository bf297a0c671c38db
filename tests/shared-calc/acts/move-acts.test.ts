import { describe, expect, test } from 'vitest';
import { recordDeposit, writeJob, writeSurvey } from '#shared-calc/acts/job-acts.ts';
import { moveJob } from '#shared-calc/acts/move-acts.ts';
import { placeOrders } from '#shared-calc/acts/order-acts.ts';
import { againstChange, allAgainst } from '#shared-calc/derive/against-change.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { faultJson } from '#shared-calc/words/say-act-fault.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { faultOf, jobOf, libraryJob, valueOf } from '#tests/shared-calc/jobs/demo-jobs.ts';
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
    expect(kept?.id).toMatch(/^D-0001-[0-9a-z]{6}$/);
    expect({ ...kept, id: '', against: kept?.against.map(({ what }) => what).slice(0, 2) }).toEqual({
      id: '',
      ends: false,
      on: DEMO_DAY,
      step: 'built',
      who: 'R-builder',
      job: 'J02',
      against: ['goods', 'quote'],
      note: reason.anyway,
    });
    const next = done(records, 'moveJob', { job: 'J02', state: 'watching', ...reason }).records;
    expect([...next.done.values()].map(({ id, step }) => `${id.slice(0, 6)} ${step}`)).toEqual([
      'D-0001 built',
      'D-0002 build',
      'D-0003 watching',
    ]);
  });

  test('an earlier move goes on without them, and keeps them where both are given', () => {
    const bare = done(libraryJob(), 'moveJob', { job: 'J02', state: 'accepted' }).records;
    const kept = done(libraryJob(), 'moveJob', { job: 'J02', state: 'accepted', ...reason }).records;
    expect([[...bare.done.values()], [...kept.done.values()].map(({ step }) => step)]).toEqual([[], ['accepted']]);
  });

  test('an id that was undone is never that of another reason', () => {
    const idOf = (anyway: string) =>
      [...done(paidJob(), 'moveJob', { job: 'J02', state: 'built', ...reason, anyway }).records.done.keys()].join();
    expect(idOf('Friday')).toBe(idOf('Friday'));
    expect(idOf('Friday')).not.toBe(idOf('Monday'));
  });

  test('what was written stays: no other act alters it or takes it away', () => {
    const { records } = done(paidJob(), 'moveJob', { job: 'J02', state: 'built', ...reason });
    const [record] = records.done.values();
    if (!record) throw new Error('nothing kept');
    const { id } = record;
    const says = `Thing done ${id} stays as it was written. A reason is written by the act it is for, such as moveJob with anyway and who.`;
    expect(refused(records, 'remove', { kind: 'done', id })).toBe(says);
    expect(refused(records, 'put', { kind: 'done', record: { ...record, note: 'Nobody knows' } })).toBe(says);
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

describe('what stands against a move that comes of another act', () => {
  const kinds = (records: Records) => [...records.done.values()].map(({ job, step, note }) => [job, step, note]);

  test('a deposit counts as recorded when it is: only the rest stands against it', () => {
    const records = libraryJob();
    const change = valueOf(recordDeposit.run(derive(records, DEMO_DAY), { job: 'J02', coins: 65_000 }));
    const [moved] = againstChange(derive(records, DEMO_DAY), change);
    expect([moved?.job, moved?.state]).toEqual(['J02', 'deposit in']);
    expect(moved?.against.map(({ what }) => what)).toContain('quote');
    expect(moved?.against.map(({ what }) => what)).not.toContain('deposit');
  });

  test('an answer of the survey that is just written is known', () => {
    const against = (underFives: 'no' | 'not asked') => {
      const derived = derive(libraryJob(), DEMO_DAY);
      const change = valueOf(writeSurvey.run(derived, { job: 'J02', survey: { underFives, steps: 4 }, figures: [] }));
      return allAgainst(againstChange(derived, change)).filter(({ why }) => why.includes('under five'));
    };
    expect([against('not asked').length, against('no').length]).toEqual([1, 0]);
  });

  test('several jobs are ordered with one reason, kept for each; each line names its job', () => {
    const copied = done(paidJob(), 'copyJob', { job: 'J02' }).records;
    const both = done(copied, 'recordDeposit', { job: 'J03', coins: 65_000, on: DEMO_DAY }).records;
    const derived = derive(both, DEMO_DAY);
    const change = valueOf(placeOrders.run(derived, { jobs: ['J02', 'J03'], note: '', ...reason }));
    expect(new Set(allAgainst(againstChange(derived, change)).map(({ why }) => why.slice(0, 4)))).toEqual(
      new Set(['J02:', 'J03:']),
    );
    expect(kinds(applyChange(both, change))).toEqual([
      ['J02', 'ordered', reason.anyway],
      ['J03', 'ordered', reason.anyway],
    ]);
  });

  test('each goes on without a reason, and keeps one that is given', () => {
    const deposit = { job: 'J02', coins: 65_000 };
    const survey = { job: 'J02', survey: { steps: 4 }, figures: [] };
    expect(kinds(done(libraryJob(), 'recordDeposit', deposit).records)).toEqual([]);
    expect(kinds(done(libraryJob(), 'writeSurvey', survey).records)).toEqual([]);
    expect(kinds(done(libraryJob(), 'recordDeposit', { ...deposit, ...reason }).records)).toEqual([
      ['J02', 'deposit in', reason.anyway],
    ]);
    expect(kinds(done(libraryJob(), 'writeSurvey', { ...survey, ...reason }).records)).toEqual([
      ['J02', 'surveyed', reason.anyway],
    ]);
  });

  test('an act that moves no job has nothing against it', () => {
    const derived = derive(libraryJob(), DEMO_DAY);
    expect(againstChange(derived, valueOf(writeJob.run(derived, { job: 'J02', fields: { note: 'Noon' } })))).toEqual(
      [],
    );
  });
});
