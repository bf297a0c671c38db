import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { lw, lwJson, useDemoBook } from '#tests/electron/cli/run-cli.ts';

const { book, folder } = useDemoBook();

/** Runs a command over the demo's book; also returns whether the book is unchanged. */
async function over(...argv: readonly string[]) {
  const before = readFileSync(book());
  const ran = await lw(...argv, '--book', book());
  return { ...ran, kept: readFileSync(book()).equals(before) };
}

function writeFile(name: string, ...rows: readonly string[]): string {
  const file = path.join(folder(), name);
  writeFileSync(file, [...rows, ''].join('\r\n'));
  return file;
}

const BoxJson = z.object({
  value: z.unknown(),
  state: z.string(),
  flags: z.array(z.string()),
  fault: z.string().optional(),
});
const BenchJson = z.object({
  columns: z.array(
    z.object({
      lines: z.record(z.string(), BoxJson),
      checks: z.array(z.object({ line: z.string().nullable(), holds: z.boolean().nullable() })),
      sums: z.unknown(),
      fault: z.string().optional(),
    }),
  ),
});

/** Sums that wait for a measure of T07. */
function lacking(label: string): unknown {
  return expect.objectContaining({ atLeast: true, missing: [{ what: 'measure', of: 'T07', label }] });
}

async function benchOf(...argv: readonly string[]) {
  const answer = BenchJson.parse(await lwJson('bench', '--sizes', 'T07', ...argv, '--book', book()));
  const [column] = answer.columns;
  if (!column) throw new Error('no column');
  return column;
}

describe('a rule that cannot be worked is refused with its place and its cure', () => {
  test.each([
    ['a share of 12 where 12 % is meant', 'loose_needed(16.02 L, 12, 3 %)', 'Settling is a share; 12 % is 0.12.'],
    [
      'litres plus millimetres',
      '3 L + 2 mm',
      'Litres plus millimetres cannot be added. In 3 L + 2 mm, both sides must be of one kind. (at 1)',
    ],
    [
      'a litre where a length is wanted',
      'layer_volume(0.4 m2, 40 L)',
      'DEPTH needs a length (mm, cm, in). You gave 40 L. (at 22)',
    ],
    [
      'a function one letter off',
      'layer_volum(0.4 m2, 40 mm)',
      'No function is called layer_volum. Did you mean layer_volume? (at 1)',
    ],
    ['a unit one letter off', '40 mmm', 'Nothing called mmm is a unit. Did you mean mm? (at 4)'],
    [
      'a decimal comma in a rule',
      '12,5 mm * 2',
      'A comma parts the figures of a function; inside a rule the decimal sign is a point, as in 12.5 mm. (at 3)',
    ],
    ['a bracket left open', '(2 + 3', 'The rule stops too early: a closing bracket is missing at the end. (at 7)'],
    ['a habit of other programs', '=2+3', 'A rule has no = in front; leave it out. (at 1)'],
    [
      'two temperatures added',
      '20 degC + 3 degC',
      'A temperature plus a temperature cannot be added. In 20 degC + 3 degC, write a step in K, such as 2 K. (at 1)',
    ],
    [
      'nothing at all',
      '',
      'There is no rule here yet; write a figure or a rule, such as 40 mm or soil_gross - edge_bead. (at 1)',
    ],
    ['a division by zero', '3 L / (2 - 2)', 'The rule divides by zero.'],
    ['a negative area', 'layer_volume(0 m2 - 1 m2, 40 mm)', 'Area cannot be below zero.'],
    ['too large a number', '1e999', '1e999 is too large a number to work with. (at 1)'],
    [
      '3,000 characters of brackets',
      '('.repeat(3000),
      'The rule has 3000 characters; 2000 is the most. Put part of it in a line of its own. (at 2001)',
    ],
    [
      '1,500 brackets',
      `${'('.repeat(750)}1${')'.repeat(750)}`,
      'The rule goes more than 60 levels deep. Put part of it in a line of its own. (at 61)',
    ],
  ])('%s', async (_, rule, says) => {
    expect(await lw('work', rule)).toEqual({
      code: 1,
      out: '',
      err: `${says}
`,
    });
  });
});

describe('an order that cannot be read is refused, and the book is as it was', () => {
  test.each([
    [['--sizes', 'T7'], 'No tank called T7 in the tank book. Did you mean T07?'],
    [['--sizes', 'T07x0'], 'T07x0: build a size 1 to 999 times.'],
    [['--sizes', 'T07', '--recipe', 'H11'], 'No recipe called H11. Did you mean H1? There are: H1, H2, H3, H4.'],
    [['--sizes', 'T07', '--kit', 'ful'], 'kit=ful: kit takes basic, full or show. You gave ful. Did you mean full?'],
    [['--sizes', 'T07', '--set', 'drainag=40 mm'], 'Nothing called drainag. Did you mean drainage?'],
    [['--sizes', 'T07', '--set', 'T08.litter=40 mm'], '--set T08.litter=40 mm: no size T08 in this order. Sizes: T07.'],
    [
      ['--sizes', 'T07', '--set', 'drainage=dam_hieght / 4'],
      'drainage=dam_hieght / 4: Nothing called dam_hieght. Did you mean dam_height? (at 1)',
    ],
    [
      ['--sizes', 'T07', '--set', 'capping=drainage + edge_bead'],
      'capping=drainage + edge_bead: Millimetres plus litres cannot be added. In drainage + edge_bead, both sides must be of one kind. (at 1)',
    ],
    [
      [
        '--sizes',
        'T07',
        '--set',
        'drainage=capping * 4',
        '--set',
        'capping=freeboard',
        '--set',
        'freeboard=drainage / 4',
      ],
      'drainage=capping * 4: This box depends on itself: drainage -> capping -> freeboard -> drainage.',
    ],
    [['--sizes', 'T07', '--lines', 'soil_fornt'], 'Nothing called soil_fornt. Did you mean soil_front?'],
  ])('bench %j: %s', async (argv, says) => {
    expect(await over('bench', ...argv)).toEqual({ code: 1, out: '', err: `${says}\n`, kept: true });
  });

  test('two columns of one tank are told apart: the second is T07#2', async () => {
    const argv = ['bench', '--sizes', 'T07,T07', '--set', 'T07#2.litter=40 mm', '--lines', 'litter', '--json'];
    const { code, out } = await over(...argv);
    const { columns } = BenchJson.parse(JSON.parse(out));
    expect([code, columns.map(({ lines }) => lines['litter']?.value)]).toEqual([0, [30, 40]]);
  });

  test('a day before any price: needs, run, quote and bench name every price, and give the rest', async () => {
    const on = ['--sizes', 'T07', '--on', '2000-01-01'];
    for (const command of ['needs', 'run', 'quote']) {
      const { code, out, err } = await over(command, ...on);
      expect([code, out, err]).toEqual([0, expect.stringMatching(/not known yet: price of Expanded clay/), '']);
    }
    const column = await benchOf('--on', '2000-01-01', '--lines', 'soil_front');
    expect([column.lines['soil_front']?.value, column.sums]).toMatchObject([90, { atLeast: true, hours: 13.25 }]);
  });
});

describe('a figure that is missing or cannot be right is an answer, as far as it goes', () => {
  test('a tank nobody measured: what needs the measurement waits on it by name, the rest is there', async () => {
    const { lines, checks, sums, fault } = await benchOf('--set', 'T07.dam_height=');
    expect(
      [lines['dam_height'], lines['drainage'], lines['leaves_need']].map((box) => [box?.state, box?.fault]),
    ).toEqual([
      ['needs a figure', 'Needs a figure: dam_height.'],
      ['waiting', 'Waits on dam_height. Needs a figure: dam_height.'],
      ['house', undefined],
    ]);
    expect([sums, fault]).toEqual([lacking('T07, dam'), undefined]);
    expect(checks.filter(({ holds }) => holds === null).map(({ line }) => line)).toContain('stack_fits');
  });

  test('needs and quote of such a tank go as far as they are known; a run, and issuing, are refused', async () => {
    const asked = ['--sizes', 'T07', '--set', 'T07.dam_height='];
    for (const command of ['needs', 'quote']) {
      const { code, out } = await over(command, ...asked);
      expect([code, out]).toEqual([0, expect.stringContaining('not known yet: T07, dam\n')]);
    }
    const refused = { code: 1, out: '', kept: true };
    expect(await over('quote', ...asked, '--issue')).toEqual({ ...refused, err: 'Not known yet: T07, dam.\n' });
    expect(await over('run', ...asked)).toEqual({
      ...refused,
      err: 'T07, drainage_need: Waits on dam_height. Needs a figure: dam_height.\n',
    });
  });

  test('a settling of 1200 %: out of range where it was written, no answer where it is used', async () => {
    const { lines, sums, fault } = await benchOf('--set', 'drainage_settle=1200 %');
    expect([lines['drainage_settle'], lines['drainage_need']]).toMatchObject([
      { value: 1200, state: 'job', flags: ['out of range'] },
      { value: null, state: 'waiting', fault: 'Settling is a share; 12 % is 0.12.' },
    ]);
    expect([sums, fault]).toEqual([null, 'T07, drainage_need: Settling is a share; 12 % is 0.12.']);
  });

  test('a bare 12 in a line of per cent is 12 %', async () => {
    const { lines } = await benchOf('--set', 'drainage_settle=12');
    expect(lines['drainage_settle']).toMatchObject({ value: 12, state: 'job', flags: [] });
  });

  test('a negative depth is out of range, and the litres of it have no answer', async () => {
    const { lines } = await benchOf('--set', 'litter=-5 mm');
    expect([lines['litter'], lines['litter_dry'], lines['leaves_need']]).toMatchObject([
      { value: -5, flags: ['out of range'] },
      { value: null, state: 'waiting', fault: 'Depth cannot be below zero.' },
      { value: null, state: 'waiting', fault: 'Waits on litter_dry. Depth cannot be below zero.' },
    ]);
  });

  test('layers higher than the dam: the check says so, the soil has no answer, the drainage still has', async () => {
    const { lines, checks } = await benchOf('--set', 'drainage=160 mm');
    expect(lines['soil_front']).toMatchObject({ value: -30 });
    expect([lines['soil_gross']?.state, lines['drainage_need']?.state]).toEqual(['waiting', 'house']);
    expect(checks.find(({ line }) => line === 'stack_fits')?.holds).toBe(false);
  });
});

describe('a list that cannot be read is refused row by row', () => {
  test('five kinds of broken row in a price list: each named, nothing taken in, also not the good rows', async () => {
    const file = writeFile(
      'prices.csv',
      'material,pack,unit,price,from',
      'M01,10,L,10.20,2090-04-01',
      'M1,10,L,10.20,2090-04-01',
      'M01,11,L,10.20,2090-04-01',
      'M01,45,mm,31.50,2090-04-01',
      'M01,45,L,cheap,2090-04-01',
      'M01,45,L,31.50,1 April',
      'M01,45,L',
    );
    const says = [
      'row 3: Nothing called M1 in the material book or the tank book. Did you mean M01?',
      'row 4: M01 has no pack of 11 L. Its packs: 10 L, 45 L.',
      'row 5: M01 is sold in L; "mm" does not fit.',
      'row 6: M01: Price: "cheap" is not an amount of money.',
      'row 7: M01: From: "1 April" is not a day; write it as 2026-11-25.',
      'row 8: Has 3 fields; the heading has 5.',
    ];
    const { code, out, err, kept } = await over('book', 'import-prices', file);
    expect([code, out, kept]).toEqual([1, '', true]);
    expect(err.trimEnd().split('\n')).toEqual([...says.map((each) => `${file}, ${each}`), 'Nothing was taken in.']);
  });

  test('the store in a file: each row with its reason', async () => {
    const file = writeFile('stock.csv', 'material,amount,unit', 'M05,6,L', 'M5,6,L', 'M05,6,mm', 'M05,six,L');
    const { code, err } = await over('needs', '--sizes', 'T07', '--stock', file);
    expect([code, err.trimEnd().split('\n')]).toEqual([
      1,
      [
        `${file}, row 3: Nothing called M5 in the material book or the tank book. Did you mean M05?`,
        `${file}, row 4: M05 is sold in L; "mm" does not fit.`,
        `${file}, row 5: M05: Amount: "six" is not a figure.`,
      ],
    ]);
  });

  test.each([
    [['book', 'import-prices', 'not-there.csv'], 'Cannot read not-there.csv.'],
    [['needs', '--sizes', 'T07', '--stock', 'not-there.csv'], 'Cannot read not-there.csv.'],
    [['functions', 'layer_volum'], 'No function called layer_volum. Did you mean layer_volume?'],
  ])('%j: %s', async (argv, says) => {
    const { code, err } = argv[0] === 'functions' ? await lw(...argv) : await over(...argv);
    expect([code, err]).toEqual([1, `${says}\n`]);
  });

  test('after all of it the book is sound', async () => {
    expect(await lwJson('book', 'check', '--book', book())).toMatchObject({ sound: true, findings: [] });
  });
});
