import { describe, expect, test } from 'vitest';
import { unasked } from '#shared-calc/fields/survey.ts';
import { quoteDocument } from '#shared-calc/papers/quote-paper.ts';
import { quoteModel } from '#shared-calc/papers/quote-model.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { withoutUndefined } from '#shared-calc/records/without-undefined.ts';
import { issued, jobOf, libraryJob, withRecords, written } from '#tests/shared-calc/jobs/demo-jobs.ts';

const two = [
  { tank: 'T05', count: 1 },
  { tank: 'T07', count: 2 },
];

describe('quoteModel', () => {
  const model = quoteModel(
    issued(written(libraryJob({ sizes: two }), 'us', { 'T07.shelf_rating': '80 kg' }), 'A').body,
  );

  test('it names the client, the days and the sizes', () => {
    const { number, revision, issuedOn, pricesOn, validUntil, client, title, workshop, currency } = model;
    expect({ number, revision, issuedOn, pricesOn, validUntil, client, title, workshop, currency }).toEqual({
      number: 'Q-0001',
      revision: 'A',
      issuedOn: '2027-03-08',
      pricesOn: '2027-03-08',
      validUntil: '2027-03-29',
      client: 'Brackenlume Library',
      title: 'Reading room',
      workshop: 'Withy Street Terrarium Workshop',
      currency: 'cr',
    });
    expect(model.sizes.map(({ size, inside, kit, count }) => [size, inside, kit, count])).toEqual([
      ['T05', '600 × 445 × 600 mm', 'full', 1],
      ['T07', '900 × 445 × 600 mm', 'full', 2],
    ]);
  });

  test('a client sees what each price is for, and neither cost nor margin', () => {
    const text = JSON.stringify(model);
    expect(['costCoins', 'margin', 'reserveCoins'].filter((word) => text.includes(word))).toEqual([]);
    const what = Object.fromEntries(model.lines.map((line) => [line.group, line.what]));
    expect([what['tank'], what['microfauna'], what['work']]).toEqual([
      '1 × Rectangle 600 × 445 × 600; 2 × Rectangle 900 × 445 × 600',
      '3 × Springtail seed, a portion; 3 × Isopods, a portion of ten',
      'Survey, quote, build, carrying and handover',
    ]);
    expect(what['media']?.split('; ').slice(0, 2)).toEqual([
      '43.5 L Expanded clay 8-16 mm',
      '1.52 m Barrier mesh, 1.2 m wide, 1.2 mm',
    ]);
  });

  test('what was found or assumed says its own for each size where they differ', () => {
    const assumed = Object.fromEntries(model.assumed.map(({ label, value }) => [label, value]));
    expect([assumed['Shelf rating'], assumed['Altitude']]).toEqual([
      'T05 100\u00a0kg (assumed), T07 80\u00a0kg',
      '650\u00a0m (assumed)',
    ]);
  });

  test('a check that does not hold stands before the standing cautions, with its size and who decides', () => {
    const [first] = model.cautions.filter(({ says }) => says.includes('more than the shelf'));
    expect([first?.sizes, first?.decides]).toEqual([['T07'], 'Building owner or structural engineer']);
    expect(
      model.cautions.some(
        ({ says, decides, sizes }) => says.startsWith('Standing water') && decides === 'Builder' && sizes.length === 0,
      ),
    ).toBe(true);
  });

  test('limits of the place stand among the cautions, each with who decides', () => {
    const records = libraryJob({ sizes: two, animals: 'Small frogs' });
    const narrow = withRecords(records, 'job', [
      { ...jobOf(records, 'J02'), survey: { ...unasked, narrowestMm: 456, underFives: 'yes' } },
    ]);
    const { cautions, assumed } = quoteModel(issued(narrow, 'A').body);
    // T05 is 445 + 2 x 5 mm deep outside and passes, T07 445 + 2 x 6 mm and does not.
    const limits = cautions.filter(({ says }) => /carried|Under-fives come/i.test(says));
    expect(limits.map(({ says, decides, sizes }) => [says.slice(0, 24), decides, sizes])).toEqual([
      ['Under-fives come here: r', 'School or centre health lead, public-health office', ['T05', 'T07']],
      ['Carried upright, never o', 'Crew leader', ['T07']],
    ]);
    expect(assumed.at(-1)).toEqual({ label: 'Way in, at its narrowest', value: '456\u00a0mm' });
  });

  test('every caution names who decides; notes to our own figures are not for a client', () => {
    expect(model.cautions.filter(({ decides }) => decides === '')).toEqual([]);
    expect(model.cautions.some(({ says }) => says.includes('panel_buried'))).toBe(false);
    const unsigned = libraryJob();
    const lines = [...unsigned.line.values()].map((line) =>
      line.name === 'lift_filled' ? { ...line, decides: '' } : line,
    );
    const { cautions } = quoteModel(issued(withRecords(unsigned, 'line', lines), 'A').body);
    expect(cautions.find(({ says }) => says.startsWith('Do not lift'))?.decides).toBe('Builder');
  });

  test('a quote over sizes alone has no place, and says nothing of one', () => {
    const { job: _, columns, ...rest } = issued(libraryJob(), 'A').body;
    const body = { ...rest, columns: columns.map(({ place: __, ...column }) => column) };
    expect(quoteModel(body).cautions.some(({ says }) => /carried|who is near/i.test(says))).toBe(false);
  });

  test('dead plants are replaced once, within 14, 30 or 90 days by the kit', () => {
    const basic = quoteModel(issued(written(libraryJob(), 'client', { kit: 'basic' }), 'A').body);
    expect([basic.plantsReplacedDays, model.plantsReplacedDays]).toEqual([14, 30]);
  });

  test('a workshop that promises nothing for plants says nothing of it on its quotes', () => {
    const silent = { plantsBasicDays: undefined, plantsFullDays: undefined, plantsShowDays: undefined };
    const records = libraryJob();
    const shops = [...records.workshop.values()].map((shop) => withoutUndefined({ ...shop, ...silent }));
    const { body } = issued(withRecords(records, 'workshop', shops), 'A');

    expect(body.plantsReplacedDays).toBeNull();
    expect(quoteModel(body).plantsReplacedDays).toBeUndefined();
    expect(JSON.stringify(quoteDocument(quoteModel(body), plainDisplay))).not.toMatch(/replaced|undefined/);
  });

  test.each([
    ['basic', 14],
    ['full', 30],
    ['show', 90],
  ])('one of the %s kit, issued before workshops had days of their own, says %i as it did', (kit, days) => {
    const { plantsReplacedDays: _, workshop, ...body } = issued(written(libraryJob(), 'client', { kit }), 'A').body;
    const { plantsBasicDays: __, plantsFullDays: ___, plantsShowDays: ____, ...before } = workshop;

    expect(quoteModel({ ...body, workshop: before }).plantsReplacedDays).toBe(days);
  });

  test('a line for this job alone stands under its own name', () => {
    const records = withRecords(libraryJob(), 'quoteLine', [
      { id: 'L1', job: 'J02', label: 'Carved name board', group: 'hardscape', costCoins: 2400, by: 'client' },
    ]);
    expect(quoteModel(issued(records, 'A').body).lines.at(-1)).toEqual({
      group: 'hardscape',
      label: 'Carved name board',
      what: '',
      taxClass: 'standard',
      price: '40.00',
    });
  });
});
