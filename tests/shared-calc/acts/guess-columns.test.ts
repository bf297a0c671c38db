import { describe, expect, test } from 'vitest';
import { guessColumns } from '#shared-calc/acts/guess-columns.ts';
import { demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();
const isOurs = (code: string) => records.material.has(code);

function guess(...rows: readonly string[]) {
  return guessColumns(rows.join('\n'), {}, isOurs).columns;
}

describe('guessColumns', () => {
  test('columns are told by what stands in them, whatever they are called', () => {
    expect(
      guess(
        'Nr.;Was;Gebinde;Netto;ab',
        'K-1;Blähton, grob;10 L;9,80 €;01.02.2027',
        'K-2;Rinde;45 L;24,50 €;01.02.2027',
      ),
    ).toEqual({ article: 'Nr.', label: 'Was', pack: 'Gebinde', price: 'Netto', from: 'ab' });
  });

  test('a figure beside a column of units is the pack', () => {
    expect(
      guess(
        'SKU|TEXT|QTY|UOM|AMOUNT',
        '000410|COIR, HYDRATED|70|LTR|25.10',
        '000411|COIR, HYDRATED|9|LTR|4.75',
        '000520|INOCULANT|0.5|KGM|46.00',
      ),
    ).toEqual({ article: 'SKU', label: 'TEXT', pack: 'QTY', unit: 'UOM', price: 'AMOUNT' });
  });

  test('without a heading, or with two alike, a column is named by its place', () => {
    expect(guess('A1;Clay, coarse;10 L;9.80', 'A2;Bark, fine;45 L;24.50')).toEqual({
      article: 'column 1',
      label: 'column 2',
      pack: 'column 3',
      price: 'column 4',
    });
    expect(guess('No;Item;Price;Price', 'A1;Clay, coarse;9.80;USD', 'A2;Bark, fine;24.50;USD')).toMatchObject({
      price: 'column 3',
    });
  });

  test('our own codes are seen, and what is named already is not guessed again', () => {
    expect(guess('a;b;c', 'M01;10 L;9.80', 'M02;10 L;9.50')).toMatchObject({ material: 'a' });
    const remembered = { columns: { price: 'c' } };
    expect(guessColumns('a;b;c\nM01;10 L;9.80\nM02;10 L;9.50\n', { remembered }, isOurs).columns).not.toHaveProperty(
      'price',
    );
  });

  test('what is no list is nothing', () => {
    expect(guess('')).toBeUndefined();
    expect(guess('Dear builder,', 'prices rise in May.')).not.toHaveProperty('price');
  });
});
