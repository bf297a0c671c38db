import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import type { Sourced } from '#shared-calc/fields/source.ts';
import { reopen, temporaryFolder } from '#tests/electron/book/book-at-hand.ts';

const books = fileURLToPath(new URL('../../../fixtures/books/', import.meta.url));

function copyOf(name: string): string {
  const path = join(temporaryFolder(), 'Shop.loamwright');
  copyFileSync(join(books, name), path);
  return path;
}

describe('the step to version 9', () => {
  const marked = ({ source, sourceNote }: Sourced) => ({ source, sourceNote });

  test('a house figure as it was shipped gets the program’s mark, in a copy of the recipe and renamed too', () => {
    const path = copyOf('demo/v3.loamwright');
    const book = reopen(path);
    const line = (id: string) => marked(book.records().line.get(id) ?? {});

    expect(line('H1.lift_limit')).toMatchObject({ source: 'memory' });
    expect(line('H5.lift_limit')).toEqual(line('H1.lift_limit'));
    expect(line('H2.litter_density')).toMatchObject({ source: 'published' });
    book.close();
  });

  test('a figure that the house has edited has no mark, and a recipe of its own has none at all', () => {
    const edited = reopen(copyOf('demo/v3.loamwright'));
    expect(marked(edited.records().line.get('H1.mix_settle') ?? {})).toEqual({});
    edited.close();
    const own = reopen(copyOf('v8.loamwright'));
    expect([...own.records().line.values()].filter(({ source }) => source !== undefined)).toEqual([]);
    own.close();
  });

  test('goods and rates are marked where they are as shipped', () => {
    const path = copyOf('demo/v3.loamwright');
    const db = new Database(path);
    db.exec("UPDATE rate SET coins = 3900 WHERE id = 'R-builder'; UPDATE material SET note = '' WHERE id = 'M05'");
    db.close();
    const { rate, material } = reopen(path).records();

    expect([rate.get('R-builder'), rate.get('R-fitter')].map((each) => each?.source)).toEqual([undefined, 'house']);
    expect([material.get('M05'), material.get('M16')].map((each) => each?.source)).toEqual([undefined, 'memory']);
  });
});
