import type { Workshop } from '#shared-calc/records/records.ts';
import { csvText, type CsvCell } from './csv-text.ts';
import type { SizeOption } from './options-page.ts';
import { atLeast, isPart } from './quote-part.ts';

const headings = [
  'size',
  'tank',
  'builds',
  'price',
  'deposit',
  'weight_kg',
  'ready_on',
  'waits_for',
  'plants',
  'kwh_a_month',
  'water_l_a_month',
  'power_cost_a_month',
  'water_cost_a_month',
  'care_visits_first_year',
  'drain',
  'refill',
];

/** The options page as CSV: a row for each size, money with all its decimals; unknown figures are empty. */
export function optionsCsv(options: readonly SizeOption[], workshop: Pick<Workshop, 'decimalComma'>): string {
  return csvText([headings, ...options.map(rowOf)], workshop);
}

function rowOf(option: SizeOption): readonly CsvCell[] {
  return [
    option.size,
    option.tank,
    option.builds,
    sumOf(option, option.price),
    sumOf(option, option.deposit),
    option.weightKg ?? '',
    option.readyOn ?? '',
    option.because,
    option.plants ?? '',
    option.kWhPerMonth ?? '',
    option.waterLPerMonth ?? '',
    money(option.powerCostPerMonth),
    money(option.waterCostPerMonth),
    option.careVisits ?? '',
    option.drain,
    option.refill,
  ];
}

/** A sum that is not whole is words, so that no sheet adds it up. */
function sumOf(option: SizeOption, sum: string | undefined): CsvCell {
  return sum !== undefined && isPart(option) ? atLeast(sum, option) : money(sum);
}

function money(amount: string | undefined): CsvCell {
  return amount === undefined ? '' : { amount };
}
