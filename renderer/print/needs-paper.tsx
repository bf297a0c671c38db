import type { MaterialNeed } from '#shared-calc/buy/material-need.ts';
import type { NeedsList } from '#shared-calc/buy/needs.ts';
import type { PlantOrder } from '#shared-calc/jobs/order-plants.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { goodsWords, packsWords } from '#shared-calc/quantity/goods-words.ts';
import { Facts, Letterhead, Paper } from './paper.tsx';
import { paperCoins, paperDay } from '#shared-calc/papers/paper-words.ts';
import { PlantsTable } from './plants-table.tsx';

export interface NeedsPaperParts {
  /** `J02 Reading room` */
  readonly title: string;
  readonly sizes: string;
  readonly on: string;
  readonly letterhead: readonly string[];
  readonly list: NeedsList;
  readonly groupName: (group: string) => string;
  readonly plants: readonly PlantOrder[];
  readonly display: Display;
  readonly coinDecimals: number;
}

const heads = [
  ['Material', ''],
  ['Used', 'n'],
  ['On hand', 'n'],
  ['To buy', 'n'],
  ['Used cost', 'money'],
  ['Packs cost', 'money'],
  ['Left over', 'n'],
] as const;

/** A job's needs list, by quote group: what is used, what is on hand, what to buy and what stays over. */
export function NeedsPaper(parts: NeedsPaperParts) {
  const { title, sizes, on, letterhead, list, plants, display, coinDecimals } = parts;
  const money = (coins: number) => paperCoins(coins, { ...display, coinDecimals });
  return (
    <Paper label="Needs list" foot={`Needs list, ${title}`}>
      <Letterhead title="Needs list" who={letterhead} />
      <Facts
        facts={[
          ['Job', title],
          ['Sizes', sizes],
          ['Prices of', paperDay(on)],
        ]}
      />
      <NeedsTable parts={parts} money={money} />
      <NeedsTotals list={list} money={money} currency={display.currency} />
      <PlantsTable plants={plants} />
    </Paper>
  );
}

interface TableParts {
  readonly parts: NeedsPaperParts;
  readonly money: (coins: number) => string;
}

function NeedsTable({ parts: { list, groupName, display }, money }: TableParts) {
  const groups = [...Map.groupBy(list.needs, (need) => need.group)];
  return (
    <table class="paper-lines">
      <thead>
        <tr>
          {heads.map(([title, look]) => (
            <th key={title} scope="col" class={look}>
              {title}
            </th>
          ))}
        </tr>
      </thead>
      {groups.map(([group, needs], at) => (
        <tbody key={group} class={at === groups.length - 1 ? 'part together' : 'part'}>
          <tr>
            <th scope="rowgroup" colSpan={heads.length}>
              {groupName(group)}
            </th>
          </tr>
          {needs.map((need) => (
            <NeedRow key={need.material} need={need} display={display} money={money} />
          ))}
        </tbody>
      ))}
    </table>
  );
}

interface RowParts {
  readonly need: MaterialNeed;
  readonly display: Display;
  readonly money: (coins: number) => string;
}

function NeedRow({ need, display, money }: RowParts) {
  const amount = (value: number) => (value > 1e-9 ? goodsWords(value, need.unit, display) : '');
  return (
    <tr>
      <td>
        {need.material} {need.label}
      </td>
      <td class="n">{amount(need.used)}</td>
      <td class="n">{amount(need.onHand)}</td>
      <td class="n">{packsWords(need, display)}</td>
      <td class="money">{money(need.costCoins)}</td>
      <td class="money">{money(need.packsCoins)}</td>
      <td class="n">{amount(need.leftOver)}</td>
    </tr>
  );
}

interface TotalsParts {
  readonly list: NeedsList;
  readonly money: (coins: number) => string;
  readonly currency: string;
}

function NeedsTotals({ list, money, currency }: TotalsParts) {
  return (
    <table class="totals">
      <tbody>
        <tr>
          <th scope="row">Used cost, {currency}</th>
          <td>{money(list.totalCoins)}</td>
        </tr>
        <tr>
          <th scope="row">Packs cost</th>
          <td>{money(list.packsTotalCoins)}</td>
        </tr>
        <tr class="price">
          <th scope="row">Packs with carriage</th>
          <td>{money(list.landedCoins)}</td>
        </tr>
      </tbody>
    </table>
  );
}
