import type { ShoppingRun } from '#shared-calc/buy/shopping-run.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import { coinAmount } from './coin-amount.ts';
import { csvText, type CsvCell } from './csv-text.ts';
import { sayEachLack, sumLabel } from './quote-part.ts';
import { packList } from './needs-csv.ts';

const heading = [
  'supplier',
  'material',
  'label',
  'needed',
  'unit',
  'on hand',
  'packs',
  'together',
  'alone',
  'left over',
];

/** A shopping run as CSV: a row for each material, then each supplier's carriage, then the sums. */
export function runCsv(run: ShoppingRun, workshop: Workshop): string {
  const money = (coins: number) => coinAmount(coins, workshop.coinDecimals);
  const nameOf = (id: string | undefined) => run.suppliers.find((each) => each.supplier === id)?.name ?? '';
  const goods = run.materials.map((need): CsvCell[] => [
    nameOf(need.supplier),
    need.material,
    need.label,
    cleanNoise(need.used),
    need.unit,
    cleanNoise(need.onHand),
    packList(need),
    ...(need.lacks ? ['', '', ''] : [money(need.costCoins), money(need.aloneCoins), cleanNoise(need.leftOver)]),
  ]);
  const carriage = run.suppliers.map((bill): CsvCell[] => {
    return [bill.name, '', 'carriage', '', '', '', '', money(bill.carriageCoins), '', ''];
  });
  const sums: CsvCell[][] = [
    ['', '', sumLabel('goods', run), '', '', '', '', money(run.togetherCoins), money(run.aloneCoins), ''],
    ['', '', sumLabel('landed', run), '', '', '', '', money(run.landedTogetherCoins), money(run.landedAloneCoins), ''],
  ];
  const lacks = sayEachLack(run).map((says): CsvCell[] => ['', '', says, ...Array.from(heading.slice(3), () => '')]);
  return csvText([heading, ...goods, ...carriage, ...sums, ...lacks], workshop);
}
