import type { NeedsList } from '#shared-calc/buy/needs.ts';
import type { MaterialNeed } from '#shared-calc/buy/material-need.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import { coinAmount } from './coin-amount.ts';
import { csvText, type CsvCell } from './csv-text.ts';
import { sayEachLack, sumLabel } from './quote-part.ts';

const heading = [
  'material',
  'label',
  'group',
  'used',
  'unit',
  'on hand',
  'packs',
  'used cost',
  'packs cost',
  'left over',
];

/** A needs list as CSV: a row for each material, figures in the material's unit, money in the book's currency. */
export function needsCsv(list: NeedsList, workshop: Workshop): string {
  const money = (coins: number) => coinAmount(coins, workshop.coinDecimals);
  const rows = list.needs.map((need): CsvCell[] => [
    need.material,
    need.label,
    need.group,
    cleanNoise(need.used),
    need.unit,
    cleanNoise(need.onHand),
    packList(need),
    ...(need.lacks ? ['', '', ''] : [money(need.costCoins), money(need.packsCoins), cleanNoise(need.leftOver)]),
  ]);
  const total: CsvCell[] = [
    sumLabel('total', list),
    '',
    '',
    '',
    '',
    '',
    '',
    money(list.totalCoins),
    money(list.packsTotalCoins),
    '',
  ];
  const lacks = sayEachLack(list).map((says): CsvCell[] => [says, ...Array.from(heading.slice(1), () => '')]);
  return csvText([heading, ...rows, total, ...lacks], workshop);
}

/** Packs to buy in words: `1 x 45 L; 2 x 10 L`. */
export function packList(need: Pick<MaterialNeed, 'packs' | 'unit' | 'sale' | 'lacks'>): string {
  if (need.lacks) return 'no price';
  if (need.sale === 'cut') return 'cut to size';
  return need.packs.map((pack) => packWords(pack.count, cleanNoise(pack.amount), need.unit)).join('; ');
}

function packWords(count: number, amount: number, unit: string): string {
  if (unit !== 'each') return `${count} x ${amount} ${unit}`;
  return amount === 1 ? String(count) : `${count} x ${amount}`;
}
