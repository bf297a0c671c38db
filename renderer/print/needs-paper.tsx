import type { MaterialNeed } from '#shared-calc/buy/material-need.ts';
import type { NeedsList } from '#shared-calc/buy/needs.ts';
import type { PlantOrder } from '#shared-calc/jobs/order-plants.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { goodsWords, packsWords } from './goods-words.ts';
import { Facts, Letterhead, Paper } from './paper.tsx';
import { paperCoins, paperDay } from './paper-words.ts';
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

/** A job's needs list, by quote group: what is used, what is on hand, what to buy and what stays over. */
export function NeedsPaper({
  title,
  sizes,
  on,
  letterhead,
  list,
  groupName,
  plants,
  display,
  coinDecimals,
}: NeedsPaperParts) {
  const money = (coins: number) => paperCoins(coins, { ...display, coinDecimals });
  const groups = [...Map.groupBy(list.needs, (need) => need.group)];
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
      <table class="paper-lines">
        <thead>
          <tr>
            <th scope="col">Material</th>
            <th scope="col" class="n">
              Used
            </th>
            <th scope="col" class="n">
              On hand
            </th>
            <th scope="col" class="n">
              To buy
            </th>
            <th scope="col" class="money">
              Used cost
            </th>
            <th scope="col" class="money">
              Packs cost
            </th>
            <th scope="col" class="n">
              Left over
            </th>
          </tr>
        </thead>
        {groups.map(([group, needs], at) => (
          <tbody key={group} class={at === groups.length - 1 ? 'part together' : 'part'}>
            <tr>
              <th scope="rowgroup" colSpan={7}>
                {groupName(group)}
              </th>
            </tr>
            {needs.map((need) => (
              <NeedRow key={need.material} need={need} display={display} money={money} />
            ))}
          </tbody>
        ))}
      </table>
      <NeedsTotals list={list} money={money} currency={display.currency} />
      <PlantsTable plants={plants} />
    </Paper>
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
