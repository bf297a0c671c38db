import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { lw, lwJson, useDemoBook } from './run-cli.ts';
import { type Said, useSaidWhole } from './said-whole.ts';

const lists = fileURLToPath(new URL('../../../fixtures/price-lists/', import.meta.url));
const of = (name: string) => `${lists}${name}`;

/** Lists as four suppliers make them, taken as they are. */
const turns: readonly Said[] = [
  [
    [
      'prices',
      'import',
      of('copper-creek.csv'),
      '--supplier',
      'S-hollin',
      '--map',
      of('copper-creek.map.json'),
      '--try',
    ],
    [
      'row  material  pack    from        before    price',
      '---  --------  ------  ----------  ------  -------  --------',
      '  1  M06       12 gal  2028-01-12            41.40  new pack',
      '  2  M01       10 L    2028-01-12    9.80    10.20',
      '  3  M07       15 gal  2028-01-31            61.20  new pack',
      '  5  M03       30 m    2028-01-12   96.00  1096.00',
      '',
      'left  why',
      '----  ---------------------------------------------------------------------',
      '   4  Price: "on request" is not an amount of money.',
      '   6  Pack "1 bag": there is no unit called bag. Say how much a pack holds.',
      '   7  It is not known yet what article H-155 is.',
      '',
      'Tried only: 4 prices could be taken in, 3 left.',
    ],
  ],
  [
    ['prices', 'import', of('kork-und-laub.txt'), '--supplier', 'S-saltbarrow', '--map', of('kork-und-laub.map.json')],
    [
      'row  material  pack     from        before    price',
      '---  --------  -------  ----------  ------  -------',
      '  1  M19       5 kg     2028-02-01   49.00    51.40',
      '  2  M20       5 each   2028-02-01   60.00    63.00',
      '  3  M22       10 each  2028-02-01  132.00  1132.50',
      '  4  M15       0.5 kg   2028-02-15   19.00    19.80',
      '',
      'left  why',
      '----  ---------------------------------------------',
      '   5  From: there is no 31.02.2028 in the calendar.',
      '',
      '4 prices taken in, 1 left.',
    ],
  ],
  [
    ['prices', 'import', of('verre-du-nord.csv'), '--supplier', 'S-greavel', '--map', of('verre-du-nord.map.json')],
    [
      'row  material  pack     from        before    price',
      '---  --------  -------  ----------  ------  -------',
      '  1  T07       1 each   2028-01-01  214.00   221.00',
      '  2  T08       1 each   2028-01-01  396.00  1396.00',
      '  3  M24       12 each  2028-01-01   62.00    64.90',
      '  4  M23       12 each  2028-01-01  121.00   125.50',
      '  5  M24       1 each   2028-01-01    6.00     6.20',
      '',
      '5 prices taken in.',
    ],
  ],
  [
    ['prices', 'import', of('north-mill.psv'), '--supplier', 'S-hollin', '--map', of('north-mill.map.json')],
    [
      'row  material  pack    from        before    price',
      '---  --------  ------  ----------  ------  -------  --------',
      '  1  M05       70 L    2028-01-01   24.50    25.10',
      '  2  M05       9 L     2028-01-01    4.60     4.75',
      '  3  M26       0.5 kg  2028-01-01   45.00    46.00',
      '  4  M12       1 m3    2028-01-01          1040.00  new pack',
      '',
      'left  why',
      '----  -----------------------------------------------------',
      '   5  Price: "3.999" has a fraction of a coin.',
      '   6  The price is 0. Leave it empty while it is not known.',
      '   7  Price: "-13.50" is below zero.',
      '   8  Has 6 cells; the heading has 7.',
      '   9  It is not known yet what article 000900 is.',
      '',
      '4 prices taken in, 5 left.',
    ],
  ],
  [
    ['prices', 'import', of('kork-und-laub.txt'), '--supplier', 'S-saltbarrow'],
    [
      'row  material  pack     from         before    price',
      '---  --------  -------  ----------  -------  -------  -----------',
      '  1  M19       5 kg     2028-02-01    51.40    51.40  in the book',
      '  2  M20       5 each   2028-02-01    63.00    63.00  in the book',
      '  3  M22       10 each  2028-02-01  1132.50  1132.50  in the book',
      '  4  M15       0.5 kg   2028-02-15    19.80    19.80  in the book',
      '',
      'left  why',
      '----  ---------------------------------------------',
      '   5  From: there is no 31.02.2028 in the calendar.',
      '',
      '0 prices taken in, 4 in the book already, 1 left.',
    ],
  ],
  [
    ['prices', 'export', '--supplier', 'S-back-room'],
    [
      'article,material,label,pack,unit,price,from,supplier\r',
      ',SP,"Springtail seed, a portion",1,each,6.00,2027-03-01,S-back-room\r',
      ',IS,"Isopods, a portion of ten",1,each,8.00,2027-03-01,S-back-room\r',
      ',VAN,"Van, a kilometre driven",1,km,0.45,2027-03-01,S-back-room',
    ],
  ],
  [
    ['prices', 'import', './nobody.csv', '--supplier', 'S-holin'],
    ['! There is no supplier S-holin. Did you mean S-hollin?'],
  ],
];

describe('what is printed of price lists', () => {
  const { file, saidInTurn } = useSaidWhole('2027-03-08');

  test('lists of four makings, one of them again by what was remembered, and the present list', async () => {
    file('nobody.csv', 'article,price');
    expect(await saidInTurn(turns)).toEqual(turns);
  });
});

describe('prices import', () => {
  const { book, folder } = useDemoBook();
  const write = (name: string, bytes: string | Uint8Array) => {
    const file = path.join(folder(), name);
    writeFileSync(file, bytes);
    return file;
  };
  const revision = async () => await lwJson('book', 'check', '--book', book());

  test('--json tells each row that is taken or left; --try writes nothing', async () => {
    const before = await revision();
    const file = write(
      'own.csv',
      'Item No.;Description;Pack;Price;Valid\r\nH-104;Clay, bagged;12 gal;$38.50;2027-05-12\r\nH-999;Post;1 EA;$9.80;2027-05-12\r\n',
    );
    const map = write(
      'map.json',
      JSON.stringify({
        columns: { article: 'Item No.', label: 'Description', pack: 'Pack', price: 'Price', from: 'Valid' },
        articles: { 'H-104': 'M01' },
      }),
    );
    const asked = ['prices', 'import', file, '--supplier', 'S-hollin', '--book', book()];
    const answer = {
      taken: [
        { row: 1, material: 'M01', pack: { amount: 12, unit: 'gal' }, price: '38.50', from: '2027-05-12', new: 'pack' },
      ],
      left: [{ row: 2, why: 'It is not known yet what article H-999 is.' }],
    };
    expect(await lwJson(...asked, '--map', map, '--try')).toEqual(answer);
    expect(await revision()).toEqual(before);
    expect(await lwJson(...asked, '--map', map)).toEqual(answer);
    const again = [{ row: 1, material: 'M01', pack: { amount: 12, unit: 'gal' }, price: '38.50', from: '2027-05-12' }];
    expect(await lwJson(...asked)).toEqual({ ...answer, taken: again });
    expect(await lwJson('prices', 'export', '--supplier', 'S-hollin', '--book', book())).toContainEqual({
      article: 'H-104',
      material: 'M01',
      label: 'Expanded clay 8-16 mm',
      pack: { amount: 45.424941408, unit: 'L' },
      price: '38.50',
      from: '2027-05-12',
      supplier: 'S-hollin',
    });
  });

  test.each([
    ['nothing at all', '', 'empty-file', 'The file is empty.'],
    [
      'a sheet of a spreadsheet program',
      Uint8Array.of(0x50, 0x4b, 3, 4, 20, 0, 6, 0),
      'not-text',
      'This is no text. Save the sheet as CSV and choose that.',
    ],
    ['a heading alone', 'article,price,from\r\n', 'no-rows', 'The list has no rows under a heading.'],
    [
      'a letter',
      'Dear builder,\r\nprices rise in May.\r\n',
      'no-heading',
      'Say which heading is the article number and which the price. The list has "Dear builder".',
    ],
    [
      'a list without a day',
      'article,pack,price\r\nX,1 EA,3\r\n',
      'no-day',
      'The list does not say from which day its prices hold. Say the day.',
    ],
  ])('%s is refused with its reason, and nothing is written', async (name, bytes, kind, says) => {
    const before = await revision();
    const file = write(`${name}.csv`, bytes);
    const ran = await lw('prices', 'import', file, '--supplier', 'S-ternfield', '--json', '--book', book());
    expect(ran).toEqual({ code: 1, out: `${JSON.stringify({ fault: { kind, says } })}\n`, err: `${says}\n` });
    expect(await revision()).toEqual(before);
  });

  test.each([
    [['prices', 'import'], 2, 'Name one file: prices import spring.csv --supplier S-hollin'],
    [['prices', 'import', 'x.csv'], 2, 'Say whose list it is: --supplier S-hollin'],
    [['prices', 'import', '/nowhere/x.csv', '--supplier', 'S-hollin'], 1, 'Cannot read /nowhere/x.csv.'],
    [['prices', 'export', 'x.csv'], 2, 'What is x.csv for?'],
  ])('%j ends with %i', async (argv, code, err) => {
    expect(await lw(...argv, '--book', book())).toEqual({ code, out: '', err: `${err}\n` });
  });

  test('a map that is none is refused with what is wrong in it', async () => {
    const file = of('copper-creek.csv');
    const says = async (map: string) =>
      (await lw('prices', 'import', file, '--supplier', 'S-hollin', '--map', write('m.json', map), '--book', book()))
        .err;
    expect(await says('{"columns":{"prise":"Price"},"decimal":";"}')).toMatch(
      /m\.json: columns has no field called prise; decimal is ";"; it wants one of \., ,\.\n$/,
    );
    expect(await says('{')).toMatch(/m\.json is no JSON: .*\n$/);
  });

  test('the whole list goes out and comes in again as nothing', async () => {
    const { out } = await lw('prices', 'export', '--book', book());
    const file = write('all.csv', out);
    const before = readFileSync(file, 'utf8');
    await lwJson('prices', 'import', file, '--supplier', 'S-saltbarrow', '--book', book());
    expect((await lw('prices', 'export', '--book', book())).out).toBe(before);
  });
});
