import { cpSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, onTestFinished, test } from 'vitest';
import { makeDemoBook, makePlainBook, openOrMakeBook, type SeedOptions } from '#electron/book/seed-demo.ts';
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

describe('makePlainBook', () => {
  test('a workshop of one’s own begins with the recipes and goods, without names, suppliers, prices, store and jobs', () => {
    const records = made(makePlainBook).records();
    const full = made(makeDemoBook).records();
    const gone = ['supplier', 'packPrice', 'closedDay', 'job', 'size', 'localValue', 'move'] as const;
    const kinds = [
      'tank',
      'material',
      'pack',
      'plant',
      'cultureKind',
      'animalKind',
      'rate',
      'taxClass',
      'margin',
      'recipe',
      'line',
    ] as const;

    expect(gone.map((kind) => records[kind].size)).toEqual(gone.map(() => 0));
    expect(kinds.map((kind) => [...records[kind].keys()])).toEqual(kinds.map((kind) => [...full[kind].keys()]));
    expect(records.workshop.get('workshop')).toEqual({
      ...full.workshop.get('workshop'),
      name: '',
      place: '',
      letterhead: '',
      payment: '',
    });
    expect([...records.material.values(), ...records.tank.values()].filter(({ supplier }) => supplier)).toEqual([]);
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
