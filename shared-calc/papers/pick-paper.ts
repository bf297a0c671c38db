import { choosePlants, pricedPlants } from '#shared-calc/jobs/choose-plants.ts';
import { plantNeeds, plantPlace } from '#shared-calc/jobs/plant-place.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { readUnits } from '#shared-calc/quantity/figure-words.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { needsCautions } from '#shared-calc/prepare/order-cautions.ts';
import { cautionsBlock, paragraph, sheet, type PaperBlock } from './document.ts';
import { displayFor, jobWords, titleOf, type MakePaper, type PaperInput } from './paper-input.ts';
import { pickListCsv } from './pick-list-csv.ts';
import { pickLists, type PickList, type PickPlants, type PickRow } from './pick-list.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { ok } from '#shared-calc/result.ts';

/** What must be ready on build day, in the order of use, a list for each size. */
export const pickPaper: MakePaper = (input) => {
  const display = displayFor(input);
  const lists = pickLists(input.bench, input.records, display, pickPlants(input));
  return ok({
    data: lists,
    document: {
      title: `Pick list, ${titleOf(input)}`,
      blocks: lists.flatMap((list) => [
        ...blocksOf(list, titleOf(input), display),
        cautionsBlock(needsCautions(input.bench)),
      ]),
    },
    csv: pickListCsv(lists, workshopOf(input.records)),
  });
};

/** Plants by name, for the place and the animals of a job. */
export function pickPlants(input: Pick<PaperInput, 'bench' | 'records' | 'pricing' | 'sheet'>): PickPlants {
  const { bench, records } = input;
  const { prices } = input.pricing;
  const plants = pricedPlants(records, prices);
  const { coinDecimals } = workshopOf(records);
  return {
    of: (column) => choosePlants(plants, plantNeeds(bench, column), plantPlace(bench, column, jobWords(input))),
    prices,
    money: (coins) => coinsText(coins, coinDecimals),
  };
}

function blocksOf({ called, tank, builds, rows }: PickList, title: string, display: Display): readonly PaperBlock[] {
  return [
    sheet(`Pick list ${called}`),
    paragraph(`${title}. ${tank}${builds > 1 ? `; this list for each of ${builds}` : ''}.`),
    {
      is: 'table',
      head: ['step', 'what', 'material', 'how much', 'where from', 'who brings it'],
      rows: rows.map(({ section, label, material, amount, from, brings, price }) => [
        section,
        label,
        material.toLowerCase() === label.toLowerCase() ? '' : material + sayPrice(price),
        readUnits(amount, display).replace(/\u00a0each$/, ''),
        from,
        brings,
      ]),
      right: [3],
      groups: 'beside',
      small: [2],
      tick: true,
    },
  ];
}

function sayPrice(price: PickRow['price']): string {
  if (!price) return '';
  const own = price.own === '' ? 'price not known yet' : price.own;
  return `, ${own}${price.class === '' ? '' : ` (class ${price.class})`}`;
}
