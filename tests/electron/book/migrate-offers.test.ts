import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { reopen, temporaryFolder } from '#tests/electron/book/book-at-hand.ts';

const books = fileURLToPath(new URL('../../../fixtures/books/', import.meta.url));

function copyOf(name: string): string {
  const path = join(temporaryFolder(), 'Shop.loamwright');
  copyFileSync(join(books, name), path);
  return path;
}

describe('the step to version 17', () => {
  test('packs are sold by whom their material was bought from; a plant keeps its price, as a pack of one', () => {
    const book = reopen(copyOf('demo/v2.loamwright'));
    const { pack, packPrice, plant, material, tank } = book.records();
    const strange = [...pack.values()].filter(
      (each) => each.supplier !== (material.get(each.material) ?? tank.get(each.material))?.supplier,
    );
    const ofClass = packPrice.get('PE-1@start');

    expect(strange.map((each) => each.material)).toEqual([...plant.keys()]);
    expect([pack.get('P13-1'), packPrice.get('P13-1@start')]).toEqual([
      { id: 'P13-1', material: 'P13', amount: 1, supplier: material.get('PE')?.supplier },
      { id: 'P13-1@start', pack: 'P13-1', from: ofClass?.from, priceCoins: 520 },
    ]);
    expect(book.records().rate.has('R-van')).toBe(false);
    book.close();
  });

  test('a plant of no price has none, and one with the code of a material takes another code', () => {
    const path = copyOf('v14.loamwright');
    const db = new Database(path);
    db.exec("UPDATE plant SET id = 'M01', price_coins = 0");
    db.close();
    const book = reopen(path);

    expect([...book.records().plant.keys()]).toEqual(['M01-plant']);
    expect([book.records().pack.get('M01-plant-1'), book.records().pack.get('M01-10')?.supplier]).toEqual([
      { id: 'M01-plant-1', material: 'M01-plant', amount: 1 },
      'S1',
    ]);
    expect([...book.records().packPrice.values()].map(({ pack }) => pack)).toEqual(['M01-10']);
    book.close();
  });
});
