import { describe, expect, test } from 'vitest';
import { readQuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { reworkQuote, partsOf } from '#shared-calc/jobs/rework-quote.ts';
import { derive, type DerivedJob } from '#shared-calc/derive/derived.ts';
import { houseOffers } from '#shared-calc/derive/house-offers.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { done, refused } from '#tests/shared-calc/acts/do-act.ts';
import { issued, libraryJob, valueOf } from '#tests/shared-calc/jobs/demo-jobs.ts';

/** A dry gecko tank T05 by H3 and a frog tank T07 by H1, the recipe of the job. */
const both = ofSizes({ tank: 'T05', recipe: 'H3' }, { tank: 'T07' });

function ofSizes(...sizes: readonly { readonly tank: string; readonly recipe?: string }[]): Records {
  return libraryJob({ writings: [], sizes: sizes.map((size) => ({ count: 1, ...size })) });
}

function worked(records: Records): DerivedJob {
  const job = derive(records, DEMO_DAY).job('J02');
  if (!job) throw new Error('no job J02');
  return job;
}

function costs(records: Records) {
  const { quote } = valueOf(worked(records).sums());
  return new Map(quote.lines.map(({ group, costCoins }) => [group, costCoins]));
}

function used(records: Records, material: string): number {
  const { needs } = valueOf(worked(records).sums()).needs;
  return needs.find((need) => need.material === material)?.used ?? 0;
}

function boxOf(records: Records, column: string, line: string) {
  return worked(records).bench.box(column, line);
}

describe('a job with a frog tank and a dry gecko tank', () => {
  test('leaves: 0.267 m2 x 70 % x 20 mm x 12.2 g/L x 1.1 and 0.4005 m2 x 30 mm x 12.2 g/L x 1.1', () => {
    expect([used(ofSizes({ tank: 'T05', recipe: 'H3' }), 'M15'), used(ofSizes({ tank: 'T07' }), 'M15')]).toEqual([
      expect.closeTo(50.164, 3),
      expect.closeTo(161.241, 3),
    ]);
    expect(used(both, 'M15')).toBeCloseTo(50.164 + 161.241, 2);
  });

  test('goods cost what both cost alone; survey, quote, way and second person are counted once', () => {
    const [whole, gecko, frog] = [both, ofSizes({ tank: 'T05', recipe: 'H3' }), ofSizes({ tank: 'T07' })].map(costs);
    const goods = [...(whole ?? [])].filter(([group]) => group !== 'work');
    expect(goods).toEqual(goods.map(([group]) => [group, (gecko?.get(group) ?? 0) + (frog?.get(group) ?? 0)]));
    // 379.2 min and 565.2 min at the tanks, and once 45 + 60 + 60 + 60 min: 1169.4 min are 19.5 h at 43.00.
    expect(valueOf(worked(both).sums()).quote.hours).toBe(19.5);
    expect(whole?.get('work')).toBe(83_850);
  });

  test('a line that a recipe does not have is not in it, and asks for nothing', () => {
    expect(
      [boxOf(both, 'T05', 'coir_need'), boxOf(both, 'T07', 'sand_need')].map(({ state, value }) => [state, value]),
    ).toEqual([
      ['not in this recipe', undefined],
      ['not in this recipe', undefined],
    ]);
    expect(boxOf(both, 'T07', 'coir_need').value).toBe(boxOf(ofSizes({ tank: 'T07' }), 'T07', 'coir_need').value);
  });

  test('a value for the whole job goes to each recipe that has its line', () => {
    const set = done(both, 'setValues', {
      job: 'J02',
      writings: [{ line: 'litter', text: '10 mm' }],
      by: 'us',
    }).records;
    expect(['T05', 'T07'].map((column) => boxOf(set, column, 'litter').state)).toEqual(['job', 'job']);
    const sand = done(both, 'setValues', {
      job: 'J02',
      writings: [{ line: 'sand_parts', text: '9' }],
      by: 'us',
    }).records;
    expect(boxOf(sand, 'T05', 'sand_parts').value).toBe(9);
  });

  test('a cell that is not in the recipe of its size is refused by name', () => {
    const cells = [{ column: 'T05', line: 'coir_parts', text: '2' }];
    expect(refused(both, 'writeCells', { job: 'J02', cells })).toBe(
      'Coir parts is not in recipe H3, which T05 is built by.',
    );
  });

  test('a size is taken over to the recipe of the job, and back', () => {
    const wet = done(both, 'setRecipe', { job: 'J02', column: 'T05', recipe: null }).records;
    expect(costs(wet)).toEqual(costs(ofSizes({ tank: 'T05' }, { tank: 'T07' })));
    const dry = done(wet, 'setRecipe', { job: 'J02', column: 'T05', recipe: 'H3' }).records;
    expect(costs(dry)).toEqual(costs(both));
  });
});

describe('a sold job of two recipes', () => {
  const quoted = issued(both, 'A');
  const sold = done(quoted.records, 'moveJob', { job: 'J02', state: 'accepted' }).records;
  const written = ['H1', 'H3'].reduce(
    (records, recipe) => done(records, 'writeLine', { line: `${recipe}.litter`, text: '5 mm' }).records,
    sold,
  );

  test('its quote holds both, and comes to the same again', () => {
    const text = quoted.records.issuedQuote.get('Q-0001A')?.body ?? '';
    const body = readQuoteBody(text);
    expect(body && valueOf(reworkQuote(partsOf(body))).grossCoins).toBe(valueOf(worked(both).sums()).quote.grossCoins);
  });

  test('it stays as sold when either house moves on, and is offered both changes', () => {
    expect(costs(written)).toEqual(costs(both));
    expect(houseOffers(derive(written, DEMO_DAY)).map(({ change }) => change.recipe)).toEqual(['H1', 'H3']);
  });

  test('a change that it takes goes into the sizes of that recipe alone', () => {
    const change = [...written.houseChange.values()].find(({ recipe }) => recipe === 'H3');
    const taken = done(written, 'answerHouse', {
      change: change?.id ?? '',
      job: 'J02',
      answer: 'take',
      who: [...written.rate.keys()][0] ?? '',
    }).records;
    expect(['T05', 'T07'].map((column) => boxOf(taken, column, 'litter').value)).toEqual([0.005, 0.03]);
  });
});
