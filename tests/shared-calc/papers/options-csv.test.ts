import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { optionsCsv } from '#shared-calc/papers/options-csv.ts';
import { optionsPage } from '#shared-calc/papers/options-page.ts';
import { DEMO_DAY, demoBench, demoPricing, demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();
const pricing = demoPricing(records);
const bench = demoBench({ sizes: ['T05', 'T07'], job: { soil_rise: '0 mm' } }, records);
const options = optionsPage({ bench, pricing, records, on: DEMO_DAY });
bench.close();

function readBack(text: string, delimiter: string): readonly Readonly<Record<string, string>>[] {
  return parse(text, { columns: true, delimiter, record_delimiter: '\r\n' });
}

describe('optionsCsv', () => {
  test('a row a size, read back by another reader as it stands on the page', () => {
    const [five, seven] = readBack(optionsCsv(options, { decimalComma: false }), ',');

    expect(five).toEqual({
      size: 'T05',
      tank: 'Rectangle 600 × 445 × 600',
      builds: '1',
      price: '1601.41',
      deposit: '645.00',
      weight_kg: '50.5',
      ready_on: '2027-05-06',
      waits_for: 'plant quarantine',
      plants: '16',
      kwh_a_month: '17.5',
      water_l_a_month: '4.1',
      power_cost_a_month: '',
      water_cost_a_month: '',
      care_visits_first_year: '5',
      drain: 'every 3 weeks',
      refill: 'every 14 days',
    });
    expect([seven?.['size'], seven?.['plants']]).toEqual(['T07', '23']);
  });

  test('where the workshop writes a comma, figures have it and fields are parted by semicolons', () => {
    const [five] = readBack(optionsCsv(options, { decimalComma: true }), ';');

    expect([five?.['price'], five?.['weight_kg']]).toEqual(['1601,41', '50,5']);
  });
});
