import { cpSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, onTestFinished, test } from 'vitest';
import { beginBook, makeDemoBook, openOrMakeBook, type SeedOptions } from '#electron/book/seed-demo.ts';
import type { Beginning } from '#shared-calc/contract/beginnings.ts';
import { allKinds, type Records } from '#shared-calc/records/records.ts';
import { faultOf, temporaryFolder, valueOf } from '#tests/electron/book/book-at-hand.ts';
import { today } from '#tests/electron/book/sample-records.ts';

const demo = fileURLToPath(new URL('../../../fixtures/demo/', import.meta.url));

function made(make: typeof makeDemoBook, options: Partial<SeedOptions> = {}) {
  const book = valueOf(make(join(temporaryFolder(), 'Shop.loamwright'), { today, ...options }));
  onTestFinished(book.close);
  return book;
}

describe('makeDemoBook', () => {
  test('the demo book is whole and sound, and undo does not empty it', () => {
    const book = made(makeDemoBook);

    expect(book.check()).toMatchObject({ value: { sound: true, findings: [], revision: 1 } });
    expect([valueOf(book.undo()), book.notes]).toEqual(['nothing', []]);
    expect([book.records().workshop.size, book.records().tank.size, [...book.records().recipe.keys()]]).toEqual([
      1,
      12,
      ['H1', 'H2', 'H3', 'H4'],
    ]);
  });

  test('its prices hold from the first of the month in which it is made', () => {
    const prices = [...made(makeDemoBook).records().packPrice.values()];

    expect(new Set(prices.map(({ from }) => from))).toEqual(new Set(['2027-03-01']));
  });

  test('it is made in a folder that is not there yet, and not where there is a book already', () => {
    const path = join(temporaryFolder(), 'new', 'folder', 'Shop.loamwright');
    valueOf(makeDemoBook(path, { today })).close();

    expect(faultOf(makeDemoBook(path, { today }))).toEqual({ kind: 'exists' });
  });

  test('a packed program says where it has the demo workshop', () => {
    const folder = join(temporaryFolder(), 'demo');
    cpSync(demo, folder, { recursive: true });

    expect(made(makeDemoBook, { demoFolder: folder }).records().tank.size).toBe(12);
  });

  test('a demo workshop that is spoilt or gone is told of, and no book is made', () => {
    const folder = join(temporaryFolder(), 'demo');
    cpSync(demo, folder, { recursive: true });
    const path = join(temporaryFolder(), 'Shop.loamwright');
    const file = (name: string) => ({ kind: 'demo-unreadable', file: join(folder, name) });
    writeFileSync(join(folder, 'tanks.json'), '[{ "id": "T01" }]');
    const spoilt = faultOf(makeDemoBook(path, { today, demoFolder: folder }));
    rmSync(join(folder, 'suppliers.json'));
    const gone = faultOf(makeDemoBook(path, { today, demoFolder: folder }));
    rmSync(folder, { recursive: true });
    const empty = faultOf(makeDemoBook(path, { today, demoFolder: folder }));

    expect([spoilt, gone, empty]).toEqual([
      { ...file('tanks.json'), says: expect.stringContaining('record 1: label') as unknown },
      { ...file('suppliers.json'), says: 'ENOENT' },
      { ...file('recipes'), says: 'ENOENT' },
    ]);
  });
});

describe('beginBook', () => {
  const begun = (start: Beginning, guesses = false) => {
    const book = valueOf(beginBook(join(temporaryFolder(), 'Ours.loamwright'), { start, guesses }, { today }));
    onTestFinished(book.close);
    return book.records();
  };
  const sizes = (records: Records) =>
    Object.fromEntries(allKinds.flatMap((kind) => (records[kind].size === 0 ? [] : [[kind, records[kind].size]])));
  /** Every figure of money, share or promise that a book has, by where it stands. */
  const figures = ({ workshop, rate, margin, taxClass, packPrice }: Records) => [
    ...[...rate.values()].flatMap(({ id, coins }) => (coins === undefined ? [] : [id])),
    ...[...margin.values(), ...taxClass.values()].flatMap(({ id, share }) => (share === undefined ? [] : [id])),
    ...packPrice.keys(),
    ...[...workshop.values()].flatMap((each) =>
      Object.entries(each).flatMap(([key, value]) => (value === '' || value === 0 ? [] : [key])),
    ),
  ];
  const habits = ['id', 'coinDecimals', 'unitsShown', 'decimalComma', 'oldPriceDays', 'openWeekdays'];

  test('the house recipes come with what they name, and without a figure that nobody gave', () => {
    const records = begun('house');
    const shown = made(makeDemoBook).records();

    expect(sizes(records)).toEqual({
      workshop: 1,
      material: shown.material.size,
      plant: shown.plant.size,
      pack: [...shown.pack.values()].filter(({ material }) => !shown.tank.has(material)).length,
      cultureKind: shown.cultureKind.size,
      animalKind: shown.animalKind.size,
      rate: 4,
      taxClass: 1,
      margin: shown.margin.size,
      recipe: 4,
      line: shown.line.size,
    });
    expect(figures(records)).toEqual(habits);
    const bought = [...records.material.values(), ...records.pack.values()];
    expect(bought.filter(({ supplier }) => supplier !== undefined)).toEqual([]);
  });

  test('the altitude, rooms and shelf of the demo’s town are not those of the house', () => {
    const open = [...begun('house').line.values()].filter(({ recipe, text, role }) => {
      return recipe === 'H1' && role === 'given' && text === '';
    });
    expect(open.map(({ name, source }) => [name, source])).toEqual(
      [
        'altitude',
        'room_summer',
        'room_winter',
        'room_lowest',
        'humidity_summer',
        'humidity_winter',
        'shelf_rating',
      ].map((name) => [name, undefined]),
    );
  });

  test('the demo’s prices come along where they are wanted, each as a guess; those of tanks do not', () => {
    const { packPrice, pack, tank } = begun('house', true);

    expect(packPrice.size).toBe(pack.size);
    expect([...packPrice.values()].filter(({ guess }) => guess !== true)).toEqual([]);
    expect(tank.size).toBe(0);
  });

  test('an empty book has the groups of a quote and whose hours there are, and no figure', () => {
    const records = begun('empty');

    expect(sizes(records)).toEqual({ workshop: 1, rate: 4, taxClass: 1, margin: 10 });
    expect(figures(records)).toEqual(habits);
  });
});

describe('openOrMakeBook', () => {
  test('a book that another program made while this one was making it is opened', () => {
    const [path, other] = [join(temporaryFolder(), 'Shop.loamwright'), join(temporaryFolder(), 'Other.loamwright')];
    valueOf(makeDemoBook(other, { today })).close();
    const meanwhile = () => {
      cpSync(other, path);
      return '2027-03-08T10:00:00.000Z';
    };
    const book = valueOf(openOrMakeBook(path, { today, now: meanwhile }));
    onTestFinished(book.close);

    expect([...book.records().job.keys()]).toEqual(['J01']);
  });
});
