import { beforeAll, describe, expect, test } from 'vitest';
import type { FootId } from '#renderer/bench/view-model.ts';
import type { Loud } from '#renderer/store/column-scan.ts';
import { footBox, footRows } from '#renderer/store/foot-boxes.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { benchAtHand } from './book-at-hand.ts';

const sums = ['hours', 'cost', 'net', 'tax', 'gross', 'deposit'] as const satisfies readonly FootId[];

let atRest: Awaited<ReturnType<typeof benchWith>>;

beforeAll(async () => {
  atRest = await benchWith({});
});

/** The demo's bench after cells of T07 have been written. */
async function benchWith(texts: Readonly<Record<string, string>>, over: Partial<Records> = {}) {
  const { bench } = await benchAtHand({ ...demoRecords(), ...over });
  bench.acts.write(Object.entries(texts).map(([row, text]) => ({ row, column: 'T07', text })));
  const opened = bench.opened.peek();
  if (!opened) throw new Error('no bench');
  return opened;
}

/** The foot of T07, with the flags counted in its column. */
function footOfT07(counts: readonly (readonly [Loud, number])[] = [], { worked, shown } = atRest) {
  const scan = { byLine: new Map(), counts: new Map(counts) };
  const parts = { worked, faces: shown.faces(), column: 'T07', called: 'T07', scan };
  return (id: FootId) => footBox(id, parts);
}

describe('the foot of a strip', () => {
  test('has its rows with their units', () => {
    expect(footRows(atRest.shown.faces()).map(({ id, label, unit }) => [id, label, unit])).toEqual([
      ['hours', 'Hours', 'h'],
      ['mass', 'Weight, filled', 'kg'],
      ['cost', 'Cost', 'cr'],
      ['net', 'Price before tax', 'cr'],
      ['tax', 'Tax', 'cr'],
      ['gross', 'Price', 'cr'],
      ['deposit', 'Deposit', 'cr'],
      ['flags', 'Flags', ''],
    ]);
  });

  test('tells each sum, says it, and gives it away without its thousands mark', () => {
    const foot = footOfT07();
    expect(sums.map((id) => foot(id))).toEqual([
      { figure: '13.25', flags: [], spoken: 'Hours, T07, 13.25 hours', copied: '13.25' },
      { figure: '1,320.63', flags: [], spoken: 'Cost, T07, 1,320.63 cr', copied: '1320.63' },
      { figure: '1,940.36', flags: [], spoken: 'Price before tax, T07, 1,940.36 cr', copied: '1940.36' },
      { figure: '215.79', flags: [], spoken: 'Tax, T07, 215.79 cr', copied: '215.79' },
      { figure: '2,156.15', flags: [], spoken: 'Price, T07, 2,156.15 cr', copied: '2156.15' },
      { figure: '865.00', flags: [], spoken: 'Deposit, T07, 865.00 cr', copied: '865.00' },
    ]);
  });

  test('a sum that waits is at least what is known, the cost says for what, and it is copied as such', async () => {
    const foot = footOfT07([], await benchWith({ litter: '' }));
    expect(sums.map((id) => foot(id).flags.map(({ says }) => says))).toEqual([
      ['at least'],
      ['1 measure missing'],
      ...Array.from({ length: 4 }, () => ['at least']),
    ]);
    expect(foot('cost').spoken).toMatch(/^Cost, T07, at least 1,\d{3}\.\d\d cr, .*not known yet: T07, litter depth$/);
    expect(foot('gross').copied).toMatch(/^at least \d{4}\.\d\d$/);
  });

  test('hours wait for no price', async () => {
    const worked = await benchWith({}, { packPrice: new Map() });
    const foot = footOfT07([], worked);
    expect(foot('hours')).toMatchObject({ figure: '13.25', flags: [], copied: '13.25' });
    expect(foot('cost').flags.map(({ says }) => says)).toEqual([expect.stringMatching(/^\d+ prices missing$/)]);
  });

  test('old prices stand at the cost and nowhere else', () => {
    const foot = footOfT07([['old', 2]]);
    expect([...sums, 'flags' as const].map((id) => foot(id).flags.map(({ says }) => says))).toEqual([
      [],
      ['2 old prices'],
      [],
      [],
      [],
      [],
      [],
    ]);
    expect(foot('cost').spoken).toBe('Cost, T07, 1,320.63 cr, 2 old prices');
  });
});

describe('the flags of a strip', () => {
  test.each<readonly [string, readonly (readonly [Loud, number])[], string, string]>([
    ['none', [], 'none', ''],
    ['one of a sort', [['stop', 1]], '1 stop', '1 stop'],
    [
      'what only waits, is local or old is no flag',
      [
        ['waiting', 3],
        ['local', 2],
        ['job', 1],
        ['old', 1],
      ],
      'none',
      '',
    ],
    ['one that needs a figure', [['needs', 1]], '1 needs a figure', '1 needs a figure'],
    [
      'all, the gravest first',
      [
        ['fault', 1],
        ['loop', 2],
        ['needs', 3],
        ['range', 4],
        ['advice', 5],
        ['watch', 6],
        ['stop', 7],
      ],
      '7 stop, 6 watch, 5 advice, 4 out of range, 3 need a figure, 2 in a cycle, 1 without an answer',
      '7 stop, 6 watch, 5 advice, 4 out of range, 3 need a figure, 2 in a cycle, 1 without an answer',
    ],
  ])('%s', (_, counts, spoken, copied) => {
    const box = footOfT07(counts)('flags');
    expect([box.figure, box.spoken, box.copied]).toEqual(['', `Flags, T07, ${spoken}`, copied]);
    expect(box.flags.map(({ says }) => says).join(', ')).toBe(copied);
  });

  test('each with its own look and sign', () => {
    const counts = (['stop', 'watch', 'advice', 'range', 'needs', 'loop', 'fault'] as const).map(
      (loud) => [loud, 1] as const,
    );
    const { flags } = footOfT07(counts)('flags');
    expect(flags.map(({ look, sign }) => [look, sign])).toEqual([
      ['stop', 'stop'],
      ['watch', 'watch'],
      ['advice', 'advice'],
      ['range', 'range'],
      ['needs', 'need'],
      ['loop', 'loop'],
      ['range', 'range'],
    ]);
  });
});
