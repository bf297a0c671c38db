import { describe, expect, test } from 'vitest';
import { againstMove, wantsReason } from '#shared-calc/derive/against-move.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { withBags, type Bag } from '#tests/shared-calc/buy/lots.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { done } from '#tests/shared-calc/acts/do-act.ts';
import { issued, jobOf, libraryJob, withRecords, written } from '#tests/shared-calc/jobs/demo-jobs.ts';

/** What stands against moving J02, without the long list of goods. */
function against(records: Records, to: Job['state']): readonly (readonly [what: string, why: string])[] {
  return againstMove(derive(records, DEMO_DAY), 'J02', to).map(({ what, why }) => [
    what,
    why.replaceAll('\u00a0', ' ').slice(0, 76),
  ]);
}

function kinds(records: Records, to: Job['state']): readonly string[] {
  return [...new Set(against(records, to).map(([what]) => what))];
}

/** The library's T05, surveyed so that nothing about its place is open, quoted and paid. */
function paidJob(): Records {
  const records = libraryJob({ animals: 'none' });
  const job = jobOf(records, 'J02');
  const surveyed = withRecords(records, 'job', [{ ...job, survey: { ...job.survey, narrowestMm: 900 } }]);
  return done(issued(surveyed, 'A').records, 'recordDeposit', { job: 'J02', coins: 65_000, on: DEMO_DAY }).records;
}

function at(records: Records, state: Job['state']): Records {
  return withRecords(records, 'job', [{ ...jobOf(records, 'J02'), state }]);
}

const plants = { id: 'K-P', of: 'PM', amount: 4 } as const;

/** The Store has everything that the job uses. */
function stocked(records: Records, bags: readonly Bag[] = []): Records {
  const uses = derive(records, DEMO_DAY).job('J02')?.uses();
  const all = uses?.ok ? [...uses.value] : [];
  const others = all
    .filter(([material]) => !bags.some(({ of }) => of === material))
    .map(([of, amount]) => ({ of, amount }));
  return withBags(records, [...others, ...bags]);
}

describe('againstMove', () => {
  test('a stop stands first, and what may not hold after what is not known', () => {
    const hot = written(libraryJob(), 'us', { species_ceiling: '20 degC' });
    expect(against(hot, 'quoted')).toEqual([
      ['stop', "T05: 26.45 degC on a hot day is above the animals' ceiling of 20 degC."],
      ['not known yet', 'T05: Nobody has asked whether children under five come near it. Ask the clie'],
      ['not known yet', 'T05: Nobody has asked whether people over 65 or with weak immunity come near'],
      ['not known yet', 'T05: Carried upright, never on its side, the tank is 455 mm at its narrowest'],
      ['not known yet', 'T05: Nobody has measured all of the clear room: length 610 mm, clear not ask'],
      ['not known yet', 'T05: Filled it weighs 59.38 kg at worst, with the drain blocked; nobody has '],
      ['not known yet', 'T05: Nobody has asked whether the sun strikes the glass; the hottest day cou'],
      ['not known yet', "T05: No kind named: ceiling, floor and band are the house's. Whether it crus"],
      ['may not hold', 'T05: The drainage fills in 23.3 d; plan to drain or mist less. It may not: a'],
      ['watch', 'T05: A pane of this length wants 5 mm or a rail under it.'],
    ]);
  });

  test('a figure that nobody measured is one line, however many checks wait for it', () => {
    const { damHeightMm: _, ...tank } = libraryJob().tank.get('T05') ?? {};
    const records = withRecords(libraryJob(), 'tank', [{ ...tank } as never]);
    expect(against(records, 'quoted').slice(0, 1)).toEqual([
      ['not known yet', 'T05: dam not measured; 18 checks wait for it.'],
    ]);
  });

  test('advice stands against nothing, even where it may not hold', () => {
    expect(against(libraryJob(), 'quoted').filter(([, why]) => why.includes('second filling'))).toEqual([]);
  });

  test('a job that is accepted with prices missing or guessed, until its deposit is in', () => {
    const prices = [...libraryJob().packPrice.values()];
    const guessed = withRecords(
      libraryJob(),
      'packPrice',
      prices.map((each) => ({ ...each, guess: true })),
    );
    const said = (to: Job['state']) =>
      against(guessed, to).filter(([what, why]) => what === 'not known yet' && /guess/.test(why));
    expect(said('quoted')).toEqual([]);
    expect(said('accepted').map(([, why]) => why.replace(/:.*/, ''))).toEqual([
      expect.stringMatching(/^\d+ prices are guesses$/),
    ]);
    expect(said('deposit in')).toEqual(said('accepted'));
    const without = { ...libraryJob(), packPrice: new Map<string, never>() };
    expect(against(without, 'accepted').filter(([, why]) => / prices missing: /.test(why)).length).toBe(1);
  });

  test('a job that is accepted without a quote, or otherwise than it was quoted', () => {
    expect(against(libraryJob(), 'accepted').filter(([what]) => what === 'quote')).toEqual([
      ['quote', 'No quote of J02 has been issued.'],
    ]);
    const quoted = issued(libraryJob(), 'A').records;
    expect(kinds(quoted, 'accepted')).not.toContain('quote');
    const changed = written(quoted, 'client', { litter: '20 mm', 'T05.kit': 'basic' });
    expect(against(changed, 'accepted').filter(([what]) => what === 'quote')).toEqual([
      ['quote', 'J02 differs from quote Q-0001A in 2 things: issue a revision.'],
    ]);
  });

  test('without a deposit that is written down', () => {
    const accepted = at(issued(libraryJob(), 'A').records, 'accepted');
    expect(kinds(accepted, 'deposit in')).toContain('deposit');
    expect(kinds(paidJob(), 'ordered')).not.toContain('deposit');
  });

  test('what the Store has not got for it, until it is built', () => {
    const short = at(paidJob(), 'ordered');
    expect(kinds(short, 'ordered')).not.toContain('goods');
    expect(kinds(short, 'ready to build')).toContain('goods');
    expect(kinds(stocked(short), 'built')).not.toContain('goods');
    expect(kinds(at(short, 'built'), 'watching')).not.toContain('goods');
  });

  test('plants that still stand apart, with the days that are left', () => {
    const records = at(paidJob(), 'in quarantine');
    const apart = stocked(records, [{ ...plants, until: '2027-04-15' }]);
    expect(against(apart, 'built').slice(0, 1)).toEqual([
      ['quarantine', 'In quarantine until 15 April 2027, 38 days more: 4 of Mid plants.'],
    ]);
    expect(kinds(stocked(records, [{ ...plants, until: DEMO_DAY }]), 'built')).not.toContain('quarantine');
    const forgotten = at(stocked(records, [{ ...plants, until: '2027-03-09', job: 'J02' }]), 'built');
    expect(against(forgotten, 'handed over').slice(0, 1)).toEqual([
      ['quarantine', 'In quarantine until 9 March 2027, 1 day more: 4 of Mid plants.'],
    ]);
  });

  test('plants of another job are nothing to it', () => {
    const records = at(paidJob(), 'in quarantine');
    const other = { ...plants, until: '2027-04-15', job: 'J01' };
    expect(kinds(stocked(records, [other]), 'built')).not.toContain('quarantine');
  });

  test('a handover without a signed watch', () => {
    const watched = at(paidJob(), 'watching');
    expect(kinds(watched, 'handed over')).toContain('watch not signed');
    const readings = { job: 'J02', column: 'T05', readings: '0 22 90\n24 25.5 95\n48 22 90', by: 'Ottoline' };
    const signed = done(watched, 'keepWatch', readings).records;
    expect(kinds(signed, 'handed over')).not.toContain('watch not signed');
  });

  test('a job without a size is checked by nobody', () => {
    expect(against(libraryJob({ sizes: [] }), 'surveyed')).toEqual([
      ['not known yet', 'No size is taken yet: nothing is checked.'],
    ]);
  });

  test.each<[Job['state'], Job['state']]>([
    ['accepted', 'surveyed'],
    ['in service', 'built'],
    ['ordered', 'closed'],
    ['closed', 'enquiry'],
  ])('nothing stands against a step from %s to %s', (from, to) => {
    expect(against(at(libraryJob(), from), to)).toEqual([]);
  });
});

describe('wantsReason', () => {
  test.each<[Job['state'], Job['state'], boolean]>([
    ['accepted', 'ordered', false],
    ['ordered', 'ready to build', false],
    ['ready to build', 'built', true],
    ['built', 'watching', true],
    ['watching', 'handed over', true],
    ['handed over', 'in service', false],
    ['ordered', 'in service', true],
    ['closed', 'handed over', true],
    ['in service', 'built', false],
  ])('from %s to %s: %s', (from, to, wants) => {
    expect(wantsReason(from, to)).toBe(wants);
  });
});
