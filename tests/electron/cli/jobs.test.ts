import { goodsInLedger } from '#shared-calc/buy/ledger.ts';
import { standsOf } from '#tests/shared-calc/buy/lots.ts';
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import type { Book } from '#electron/book/book.ts';
import { openBook } from '#electron/book/open-book.ts';
import { hashBody } from '#electron/book/issued.ts';
import { today } from '#electron/service/today.ts';
import { lw, lwJson, useDemoBook } from './run-cli.ts';

const JobJson = z.strictObject({
  job: z.string(),
  title: z.string(),
  state: z.string(),
  sizes: z.array(z.string()),
  handover: z.string().nullable(),
  next: z.string(),
});
const Against = z.array(z.strictObject({ what: z.string(), why: z.string() }));
const MovedJson = z.strictObject({ ...JobJson.shape, against: Against });
const QuoteJson = z.object({ net: z.string(), deposit: z.string(), quote: z.string(), revision: z.string() });
const RunJson = z.object({
  materials: z.array(z.object({ material: z.string(), onHand: z.number() })),
});

describe('the jobs board on the command line', () => {
  const { book, folder } = useDemoBook();
  const ask = (...argv: readonly string[]) => lwJson(...argv, '--book', book());
  const job = async (...argv: readonly string[]) => JobJson.parse(await ask('job', ...argv));
  const paid = async (...argv: readonly string[]) => MovedJson.parse(await ask('job', 'deposit', ...argv));
  const move = async (...argv: readonly string[]) => MovedJson.parse(await ask('job', 'state', ...argv));
  const refusedWith = async (...argv: readonly string[]) => {
    const { code, out, err } = await lw(...argv, '--book', book());
    return [code, out, err.trim()];
  };

  test('the demo book has its enquiry', async () => {
    expect(z.array(JobJson).parse(await ask('jobs'))).toEqual([
      {
        job: 'J01',
        title: 'Ferry waiting hall',
        state: 'enquiry',
        sizes: ['T03', 'T07', 'T08'],
        handover: null,
        next: 'Survey the shelf and the hall',
      },
    ]);
  });

  test('from enquiry to a revision: what changed, by the client, by us, by the supplier, to the coin', async () => {
    const made = await job(
      'new',
      '--title',
      'Reading room',
      '--sizes',
      'T05',
      '--set',
      'soil_rise=0 mm',
      '--handover',
      '2027-04-28',
    );
    // Three days after the day on which the test runs.
    expect(made.next).toMatch(/^answer the enquiry, by \d{4}-\d\d-\d\d$/);
    expect(made).toMatchObject({
      job: 'J02',
      title: 'Reading room',
      state: 'enquiry',
      sizes: ['T05'],
      handover: '2027-04-28',
    });
    const first = QuoteJson.parse(await ask('quote', '--job', 'J02', '--issue'));
    expect(first).toEqual({ net: '1441.62', deposit: '645.00', quote: 'Q-0001', revision: 'A' });
    expect((await job('set', 'J02', 'litter=20 mm')).state).toBe('quoted');
    await job('set', 'J02', 'T05.drainage_waste=5 %', '--by', 'us');
    const prices = path.join(folder(), 'prices.csv');
    writeFileSync(
      prices,
      `material,pack,unit,price,from\r\nM15,100,g,6.00,${today()}\r\nT05,1,each,155.00,${today()}\r\n`,
    );
    await ask('book', 'import-prices', prices);
    const second = QuoteJson.parse(await ask('quote', '--job', 'J02', '--issue'));
    expect([second.quote, second.revision, second.net]).toEqual(['Q-0001', 'B', '1449.77']);
    // Leaves 5.59 to 3.73, clay 9.63 to 9.81, leaves 3.73 to 4.30, each over 0.6 with the rest of the group.
    expect(await ask('changed', 'Q-0001A', 'Q-0001B')).toEqual({
      lines: [
        { group: 'media', from: '78.15', to: '75.05', by: 'client' },
        { group: 'media', from: '75.05', to: '75.35', by: 'us' },
        { group: 'tank', from: '211.43', to: '221.43', by: 'supplier' },
        { group: 'media', from: '75.35', to: '76.30', by: 'supplier' },
      ],
      net: { client: '-3.10', supplier: '10.95', us: '0.30' },
      sum: '8.15',
    });
  });

  test('what was issued holds against its hash, and issuing is not undone', () => {
    const quotes = withOpenBook(book(), (opened) => [...opened.records().issuedQuote.values()]);
    expect(quotes.map(({ id, body, sha256 }) => [id, hashBody(body) === sha256])).toEqual([
      ['Q-0001A', true],
      ['Q-0001B', true],
    ]);
    expect(withOpenBook(book(), (opened) => opened.undo())).toEqual({
      ok: false,
      fault: { kind: 'lasting', label: 'quote Q-0001 B of J02 issued' },
    });
  });

  test('a quote over sizes alone has a number of its own each time', async () => {
    const numbers = [await ask('quote', '--sizes', 'T03', '--issue'), await ask('quote', '--sizes', 'T03', '--issue')];
    expect(numbers.map((each) => QuoteJson.parse(each)).map(({ quote, revision }) => quote + revision)).toEqual([
      'Q-0002A',
      'Q-0003A',
    ]);
  });

  test('accepted and paid, the shopping run takes the job; what is unpaid is bought and said', async () => {
    expect((await move('J02', 'accepted')).next).toBe('waits for the client');
    const before = await lw('run', '--jobs', 'J01,J02', '--json', '--book', book());
    expect(before.err).toBe(
      ['J01', 'J02'].map((id) => `${id} has no deposit yet: order nothing that is cut or grown for it.\n`).join(''),
    );
    expect((await paid('J02', '645.00', '--on', '2027-03-15')).state).toBe('deposit in');
    const run = RunJson.parse(await ask('run', '--jobs', 'J02'));
    // The Store's open bag of clay and its coir come off first.
    const onHand = run.materials.filter(({ material }) => ['M01', 'M05'].includes(material));
    expect(onHand).toEqual([
      { material: 'M01', onHand: 7 },
      { material: 'M05', onHand: 6 },
    ]);
  });

  test('sizes, a copy, and a step back', async () => {
    expect((await job('sizes', 'J02', 'T05,T07x2')).sizes).toEqual(['T05', 'T07x2']);
    const copy = await job('copy', 'J02');
    expect([copy.job, copy.title, copy.state, copy.sizes]).toEqual([
      'J03',
      'Copy of Reading room',
      'enquiry',
      ['T05', 'T07x2'],
    ]);
    expect(await refusedWith('job', 'state', 'J02', 'deposit', 'in')).toEqual([1, '', 'J02 is deposit in already.']);
    expect((await move('J02', 'quoted')).state).toBe('quoted');
  });

  test('a job is built only with a reason and who decides, while something stands against it', async () => {
    const { code, out, err } = await lw('job', 'state', 'J02', 'built', '--json', '--book', book());
    const { fault } = z
      .strictObject({ fault: z.strictObject({ kind: z.string(), says: z.string(), against: Against }) })
      .parse(JSON.parse(out));
    expect([code, fault.kind, fault.against[0]?.what]).toEqual([1, 'stands-against', 'stop']);
    expect(err.split('\n').slice(0, 2)).toEqual([fault.says, `Against it, stop: ${fault.against[0]?.why ?? ''}`]);
    expect((await refusedWith('job', 'state', 'J02', 'built', '--anyway', 'Friday'))[2]).toBe(
      'Say who decides it, such as R-builder.',
    );
  });

  test('a job that is built has taken its materials from the Store, and its card says why all the same', async () => {
    const moved = await move('J02', 'built', '--anyway', 'The rest comes on Friday', '--who', 'R-builder');
    expect([moved.state, moved.against[0]?.what]).toEqual(['built', 'stop']);
    const card = await lw('paper', 'build', '--job', 'J02', '--book', book());
    expect(card.out).toContain('decided by builder: The rest comes on Friday');
    expect(card.out).toMatch(/Against it, stop: T07: 27\.18.°C on a hot day is above the animals' ceiling of 27.°C\./);
    const left = withOpenBook(book(), (opened) => {
      const records = opened.records();
      return goodsInLedger(records).filter((goods) => standsOf(records, goods, '2099-01-01') > 0);
    });
    expect(left).toEqual(['M15', 'M30']);
  });

  test.each<[string, readonly string[], readonly unknown[]]>([
    ['a job nobody knows', ['job', 'set', 'J77', 'litter=9 mm'], [1, '', 'No job called J77. Jobs: J01, J02, J03.']],
    [
      'a line nobody knows',
      ['job', 'set', 'J02', 'T05.drain_gpa=9'],
      [1, '', 'Nothing called drain_gpa. Did you mean drain_gap?'],
    ],
    [
      'a rule that does not read',
      ['job', 'set', 'J02', 'litter=9 L'],
      [1, '', 'litter=9 L: This line is a length in mm. 9 L is a volume. (at 1)'],
    ],
    [
      'a tank nobody knows',
      ['job', 'sizes', 'J02', 'T55'],
      [1, '', 'No tank called T55 in the tank book. Did you mean T05?'],
    ],
    ['no sum of money', ['job', 'deposit', 'J02', '12,5'], [1, '', '12,5 is no sum of money that a deposit can be.']],
    ['no quote', ['changed', 'Q-0001A', 'Q-0001C'], [1, '', 'No issued quote Q-0001C. Did you mean Q-0001A?']],
    ['half a comparison', ['changed', 'Q-0001A'], [2, '', 'Name two issued quotes: changed Q-0001A Q-0001B.']],
    [
      'a job without sizes',
      ['job', 'new', '--title', 'Lobby'],
      [2, '', 'A new job needs --sizes: job new --title "Reading room" --sizes T05.'],
    ],
    ['by nobody', ['job', 'set', 'J02', 'litter=9', '--by', 'them'], [2, '', '--by them: choose client or us.']],
    ['jobs and sizes', ['run', '--jobs', 'J02', '--sizes', 'T05'], [2, '', 'Give --jobs or --sizes, not both.']],
  ])('%s is refused', async (_, argv, outcome) => {
    expect(await refusedWith(...argv)).toEqual(outcome);
  });
});

function withOpenBook<T>(file: string, work: (opened: Book) => T): T {
  const opened = openBook(file, { today: today(), backups: false });
  if (!opened.ok) throw new Error(JSON.stringify(opened.fault));
  try {
    return work(opened.value);
  } finally {
    opened.value.close();
  }
}
