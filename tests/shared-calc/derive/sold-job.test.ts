import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { jobEffect } from '#shared-calc/derive/job-effect.ts';
import { houseOffers } from '#shared-calc/derive/house-offers.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { draftQuote } from '#shared-calc/derive/draft-quote.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { done } from '#tests/shared-calc/acts/do-act.ts';
import { issued, libraryJob, valueOf, withRecords, written } from '#tests/shared-calc/jobs/demo-jobs.ts';
import { allOf, houseWritten, lineOf, soldJob, worked } from '#tests/shared-calc/jobs/sold-jobs.ts';

const sold = soldJob();
const given = [...sold.line.values()].filter(
  ({ recipe, role, text, unit }) => recipe === 'H1' && role === 'given' && unit !== 'choice' && /^\d/.test(text),
);
const packs = [...sold.packPrice.values()];
const rates = [...sold.rate.values()];
const shares = ['depositShare', 'contingencyShare', 'warrantyShare', 'plantLossShare', 'discountShare'] as const;

type Edit = (records: Records) => Records;

/** Any edit of the house, its prices, rates, shares or tanks. */
const anyEdit: fc.Arbitrary<Edit> = fc.oneof(
  fc
    .record({ line: fc.constantFrom(...given), times: fc.constantFrom(0.5, 0.9, 1.1, 2) })
    .map(({ line, times }): Edit => (records) => {
      const [, figure = '0', unit = ''] = /^([\d.]+)(.*)$/.exec(line.text) ?? [];
      return withRecords(records, 'line', [{ ...line, text: `${Number(figure) * times}${unit}` }]);
    }),
  fc.record({ price: fc.constantFrom(...packs), coins: fc.integer({ min: 1, max: 90_000 }) }).map(
    ({ price, coins }): Edit =>
      (records) =>
        withRecords(records, 'packPrice', [{ ...price, priceCoins: coins }]),
  ),
  fc.record({ rate: fc.constantFrom(...rates), coins: fc.integer({ min: 100, max: 9_000 }) }).map(
    ({ rate, coins }): Edit =>
      (records) =>
        withRecords(records, 'rate', [{ ...rate, coins }]),
  ),
  fc.record({ margin: fc.constantFrom(...sold.margin.values()), share: fc.constantFrom(0.1, 0.5, 0.8) }).map(
    ({ margin, share }): Edit =>
      (records) =>
        withRecords(records, 'margin', [{ ...margin, share }]),
  ),
  fc.record({ key: fc.constantFrom(...shares), share: fc.constantFrom(0.05, 0.2) }).map(
    ({ key, share }): Edit =>
      (records) =>
        withRecords(
          records,
          'workshop',
          [...records.workshop.values()].map((workshop) => ({ ...workshop, [key]: share })),
        ),
  ),
  fc.constantFrom(30, 45, 90).map(
    (mm): Edit =>
      (records) =>
        withRecords(
          records,
          'tank',
          [...records.tank.values()].map((tank) => ({ ...tank, insideHeightMm: 300 + mm, damHeightMm: mm })),
        ),
  ),
);

describe('a sold job', () => {
  test('any edit of the house, its prices, rates, shares or tanks leaves it as it was sold', () => {
    const before = allOf(sold);
    fc.assert(
      fc.property(fc.array(anyEdit, { minLength: 1, maxLength: 5 }), (edits) => {
        const house = edits.reduce((records, edit) => edit(records), sold);
        expect(allOf(house)).toEqual(before);
      }),
      { numRuns: 40 },
    );
  });

  test('an enquiry of the same house follows it', () => {
    const enquiry = libraryJob();
    expect(allOf(houseWritten(enquiry, 'litter', '20 mm'))).not.toEqual(allOf(enquiry));
  });

  test('a line that the house takes out, or renames, stays in it', () => {
    const out = done(sold, 'removeLine', { line: 'H1.litter', anyway: true }).records;
    const renamed = done(sold, 'renameLine', { line: 'H1.litter', name: 'leaf_depth' }).records;
    expect(allOf(out)).toEqual(allOf(sold));
    expect(worked(renamed).sums()).toEqual(worked(sold).sums());
    expect(worked(renamed).bench.box('T05', 'leaf_depth').value).toBe(0.03);
    expect(renamed.houseChange.size).toBe(0);
  });

  test('what it writes over is found under the name that its line has now', () => {
    const own = written(sold, 'client', { litter: '40 mm' });
    const renamed = done(own, 'renameLine', { line: 'H1.litter', name: 'leaf_depth' }).records;
    expect(worked(renamed).sums()).toEqual(worked(own).sums());
    expect(worked(renamed).sold?.differs().changed).toEqual([
      { is: 'box', box: 'leaf_depth', from: '30 mm', to: '40 mm' },
    ]);
  });

  test('another number of decimals in the currency leaves it at its worth, rounded to the new coin', () => {
    const fine = done(sold, 'rescaleCoins', { coinDecimals: 3 }).records;
    expect(valueOf(worked(fine).sums()).quote.grossCoins).toBe(1_601_441);
    expect(worked(fine).sold?.differs()).toEqual({ changed: [], words: '', coins: 0 });
  });

  test('its own boxes, sizes and one-off lines are its own, and every one of them is named', () => {
    const edited = written(sold, 'client', { litter: '40 mm', 'T05.kit': 'show' });
    const stool = { job: 'J02', label: 'Stool', group: 'media', costCoins: 1_000, by: 'client' } as const;
    const more = done(edited, 'addQuoteLine', stool).records;
    const differs = worked(more).sold?.differs();
    expect(differs?.words).toBe('2 boxes, 1 one-off line');
    expect(differs?.changed.map(({ box, from, to }) => [box, from, to])).toEqual([
      ['litter', '30 mm', '40 mm'],
      ['T05.kit', 'full', 'show'],
      ['Stool', undefined, 'Stool media 1000'],
    ]);
    expect(differs?.coins).toBe(valueOf(worked(more).sums()).quote.grossCoins - 160_141);
  });

  test('a revision with nothing changed has the sums of the quote', () => {
    const dear = withRecords(
      houseWritten(sold, 'litter', '20 mm'),
      'packPrice',
      packs.map((price) => ({ ...price, priceCoins: price.priceCoins * 2 })),
    );
    const derived = derive(dear, DEMO_DAY);
    const { body: draft } = valueOf(draftQuote(derived, worked(dear)));
    expect(draft.sums).toEqual(worked(sold).sold?.body.sums);
    expect(draft.needs).toEqual(worked(sold).sold?.body.needs);
  });

  test('saying yes to a revision moves what it is sold as, and not the job', () => {
    const paid = done(sold, 'recordDeposit', { job: 'J02', coins: 64_500 }).records;
    const revised = issued(written(paid, 'client', { litter: '40 mm' }), 'B').records;
    const next = done(revised, 'moveJob', { job: 'J02', state: 'accepted' }).records;
    expect([next.job.get('J02')?.soldAs, next.job.get('J02')?.state]).toEqual(['Q-0001B', 'deposit in']);
    expect(worked(next).sold?.differs().words).toBe('');
  });
});

describe('a change of the house', () => {
  const thinner = houseWritten(sold, 'litter', '20 mm');

  test('litter of 20 for 30 mm is offered with what it does: 35.831 g, 1.86 at cost, 3.10 and 3.47 with tax', () => {
    const offers = houseOffers(derive(thinner, DEMO_DAY));
    const [effect] = offers.map((offer) => valueOf(offer.effect()));
    if (!effect) throw new Error('nothing is offered');
    const { needs, cost, net, gross } = effect;
    expect(offers.map(({ change }) => change.id)).toEqual(['HC-0001']);
    expect(needs.map(({ material, from, to }) => [material, (to - from).toFixed(3)])).toEqual([['M15', '-35.831']]);
    expect([cost, net, gross].map(({ from, to }) => to - from)).toEqual([-186, -310, -347]);
  });

  test('taking it changes exactly what the offer said; taking it back leaves the job untouched', () => {
    const texts = fc.record({
      line: fc.constantFrom('litter', 'drainage_waste', 'litter_waste'),
      share: fc.integer({ min: 1, max: 60 }),
    });
    fc.assert(
      fc.property(texts, ({ line: name, share }) => {
        const from = lineOf(sold, name);
        const changed = houseWritten(sold, name, `${share} ${from.unit}`);
        const [offer] = houseOffers(derive(changed, DEMO_DAY));
        fc.pre(offer !== undefined);
        if (!offer) return;
        const taken = done(changed, 'answerHouse', {
          change: offer.change.id,
          job: 'J02',
          answer: 'take',
          who: 'R-builder',
        });
        expect(jobEffect(worked(changed), worked(taken.records))).toEqual(offer.effect());
        const back = houseWritten(taken.records, name, from.text);
        const untaken = done(back, 'answerHouse', { change: 'HC-0002', job: 'J02', answer: 'take', who: 'R-builder' });
        expect(allOf(untaken.records)).toEqual(allOf(sold));
      }),
      { numRuns: 15 },
    );
  });

  test('what is left leaves the job as it was, and is not offered again', () => {
    const left = done(thinner, 'answerHouse', {
      change: 'HC-0001',
      job: 'J02',
      answer: 'leave',
      who: 'R-builder',
    }).records;
    expect(allOf(left)).toEqual(allOf(sold));
    expect(houseOffers(derive(left, DEMO_DAY))).toEqual([]);
  });

  test('what the quote was issued with already is not offered', () => {
    const quoted = issued(houseWritten(libraryJob(), 'litter', '20 mm'), 'A').records;
    const accepted = soldJob(quoted);
    expect(houseOffers(derive(accepted, DEMO_DAY))).toEqual([]);
    expect(worked(accepted).sold?.body.changes).toEqual(['HC-0001']);
    const after = houseWritten(accepted, 'litter', '10 mm');
    expect([...after.houseChange.keys()]).toEqual(['HC-0001', 'HC-0002']);
    expect(houseOffers(derive(after, DEMO_DAY)).map(({ change }) => change.id)).toEqual(['HC-0002']);
  });

  test('a note, a label or a place in the list offers nothing', () => {
    const noted = done(sold, 'changeLine', {
      line: 'H1.litter',
      fields: { note: 'as the beech gives', label: 'Leaves' },
    });
    const moved = done(noted.records, 'moveLine', { line: 'H1.litter', to: 'down' });
    expect([...moved.records.houseChange.keys()]).toEqual(['HC-0001']);
    expect(houseOffers(derive(moved.records, DEMO_DAY))).toEqual([]);
  });
});
