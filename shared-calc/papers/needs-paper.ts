import { orderNeeds } from '#shared-calc/bench/order-sums.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import type { MaterialNeed } from '#shared-calc/buy/material-need.ts';
import type { NeedsList } from '#shared-calc/buy/needs.ts';
import { jobSupply } from '#shared-calc/derive/job-supply.ts';
import { useDays } from '#shared-calc/derive/use-days.ts';
import { keysOf, sizeWords } from '#shared-calc/jobs/job-sheet.ts';
import { pricedPlants } from '#shared-calc/jobs/choose-plants.ts';
import { orderPlants, type PlantOrder } from '#shared-calc/jobs/order-plants.ts';
import { needsCautions } from '#shared-calc/prepare/order-cautions.ts';
import { cautionsBlock, heading, type PaperBlock } from './document.ts';
import { goodsWords, packsWords } from '#shared-calc/quantity/goods-words.ts';
import { needsCsv } from './needs-csv.ts';
import { partData, sayEachLack, sumLabel } from './quote-part.ts';
import { displayFor, jobWords, titleOf, type MakePaper, type PaperInput } from './paper-input.ts';
import { paperCoins, paperDay } from './paper-words.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok } from '#shared-calc/result.ts';

/** Use, stock, purchase and left-over of each material, by quote group; plants by name. */
export const needsPaper: MakePaper = (input) => {
  const { records, bench, sheet, pricing, wish } = input;
  const workshop = workshopOf(records);
  const keys = keysOf(sheet);
  const useOn = useDays({ bench, keys, ...wish }, records);
  const supply = jobSupply(records, { job: sheet.job?.id, on: wish.on, useOn });
  const list = orderNeeds(bench, keys, { ...pricing, supply });
  if (!list.ok) return failed({ kind: 'order', fault: list.fault });
  const money = (coins: number) => coinsText(coins, workshop.coinDecimals);
  const plants = plantsOf(input);
  const { needs, totalCoins, packsTotalCoins, landedCoins } = list.value;
  const sums = {
    total: money(totalCoins),
    packsTotal: money(packsTotalCoins),
    landed: money(landedCoins),
    ...partData(list.value),
  };
  const display = displayFor(input);
  const shown = (coins: number) => paperCoins(coins, { ...display, coinDecimals: workshop.coinDecimals });
  const groupName = (group: string) => records.margin.get(group)?.label ?? group;
  const blocks: readonly PaperBlock[] = [
    {
      is: 'facts',
      rows: [
        ['Sizes', sheet.columns.map(({ tank, count }) => sizeWords({ tank: tank.id, count })).join(', ')],
        ['Prices of', paperDay(pricing.prices.on, display)],
      ],
    },
    {
      is: 'table',
      head: ['group', 'material', 'used', 'on hand', 'to buy', 'used cost', 'packs cost', 'left over'],
      rows: [...Map.groupBy(needs, ({ group }) => group)].flatMap(([group, of]) =>
        of.map((need) => [groupName(group), ...rowOf(need, { money: shown, display })]),
      ),
      right: [2, 3, 4, 5, 6, 7],
      groups: 'over',
    },
    sumsBlock(list.value, workshop.currency, shown),
    ...lackBlocks(list.value),
    ...plantBlocks(plants),
    cautionsBlock(needsCautions(bench)),
  ];
  return ok({
    data: { needs: needs.map((need) => dataOf(need, money)), ...sums, plants: plants.map(plantData) },
    document: { title: `Needs list, ${titleOf(input)}`, blocks },
    csv: needsCsv(list.value, workshop),
  });
};

function sumsBlock(list: NeedsList, currency: string, shown: Money): PaperBlock {
  const main = sumLabel('Packs with carriage', list);
  return {
    is: 'facts',
    look: 'sums',
    main,
    rows: [
      [sumLabel(`Used cost, ${currency}`, list), shown(list.totalCoins)],
      [sumLabel('Packs cost', list), shown(list.packsTotalCoins)],
      [main, shown(list.landedCoins)],
    ],
  };
}

function lackBlocks(list: NeedsList): readonly PaperBlock[] {
  const items = sayEachLack(list);
  return items.length === 0 ? [] : [{ is: 'list', items, short: true }];
}

/** The plants of an order by name, for its place and animals. */
export function plantsOf(input: PaperInput): readonly PlantOrder[] {
  const { survey } = jobWords(input);
  const planted = { bench: input.bench, survey };
  return orderPlants([planted], pricedPlants(input.records, input.pricing.prices));
}

type Money = (coins: number) => string;

interface RowTerms {
  readonly money: Money;
  readonly display: Display;
}

function rowOf(need: MaterialNeed, { money, display }: RowTerms): readonly string[] {
  const amount = (value: number) => (value > 1e-9 ? goodsWords(value, need.unit, display) : '');
  const costs = need.lacks ? ['', ''] : [money(need.costCoins), money(need.packsCoins)];
  return [
    `${need.material} ${need.label}`,
    amount(need.used),
    amount(need.onHand),
    need.lacks ? 'no price' : packsWords(need, display),
    ...costs,
    amount(need.leftOver),
  ];
}

function dataOf(need: MaterialNeed, money: Money): Record<string, unknown> {
  return {
    material: need.material,
    label: need.label,
    group: need.group,
    used: cleanNoise(need.used),
    unit: need.unit,
    onHand: cleanNoise(need.onHand),
    packs: need.lacks ? null : need.packs.map(({ amount, count }) => ({ size: amount, count })),
    cost: need.lacks ? null : money(need.costCoins),
    packsCost: need.lacks ? null : money(need.packsCoins),
    leftOver: need.lacks ? null : cleanNoise(need.leftOver),
  };
}

function plantBlocks(plants: readonly PlantOrder[]): readonly PaperBlock[] {
  if (plants.length === 0) return [];
  const rows = plants.map((order) => [
    order.class,
    sayOrdered(order),
    order.alternates.map(({ name }) => name).join('; '),
  ]);
  return [heading('Plants by name'), { is: 'table', head: ['class', 'order', 'or instead'], rows }];
}

/** `2 Fittonia albivenis, 2 Begonia bowerae`; plants that need shade are marked. */
export function sayOrdered({ species, short }: Pick<PlantOrder, 'species' | 'short'>): string {
  const named = species.map(({ plant, count, shade }) => `${count} ${plant.name}${shade ? ' (plant in shade)' : ''}`);
  return [...named, ...(short > 0 ? [`${short} of a kind still to be chosen`] : [])].join(', ');
}

function plantData({ class: of, species, alternates, short }: PlantOrder): Record<string, unknown> {
  return {
    class: of,
    species: species.map(({ plant, count, shade }) => ({ plant: plant.name, count, shade })),
    alternates: alternates.map(({ name }) => name),
    short,
  };
}
