import { Table } from '#renderer/kit/table.tsx';
import type { MaterialNeed } from '#shared-calc/buy/material-need.ts';
import type { NeedsList } from '#shared-calc/buy/needs.ts';
import type { PlantOrder } from '#shared-calc/jobs/order-plants.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { goodsWords, packsWords } from '#shared-calc/quantity/goods-words.ts';
import { Facts, Letterhead, Paper } from './paper.tsx';
import { paperCoins, paperDay } from '#shared-calc/papers/paper-words.ts';
import { Totals } from './paper-sums.tsx';
import { PlantsTable } from './plants-table.tsx';
import css from './paper.module.css';

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

/** A job's needs list, by quote group: what is used, what is on hand, what to buy and what is left over. */
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
      <Totals
        rows={[
          [`Used cost, ${display.currency}`, money(list.totalCoins)],
          ['Packs cost', money(list.packsTotalCoins)],
          ['Packs with carriage', money(list.landedCoins), 'sum'],
        ]}
      />
      <PlantsTable plants={plants} />
    </Paper>
  );
}

interface TableParts {
  readonly parts: NeedsPaperParts;
  readonly money: (coins: number) => string;
}

function NeedsTable({ parts: { list, groupName, display }, money }: TableParts) {
  const amount = (value: number, { unit }: MaterialNeed) => (value > 1e-9 ? goodsWords(value, unit, display) : '');
  const groups = [...Map.groupBy(list.needs, (need) => need.group)];
  return (
    <Table
      look="paper"
      label="Needs list"
      groups={groups.map(([group, rows], at) => ({
        key: group,
        head: groupName(group),
        rows,
        look: at === groups.length - 1 ? css['together'] : undefined,
      }))}
      keyOf={({ material }) => material}
      columns={[
        { head: 'Material', cell: ({ material, label }) => `${material} ${label}` },
        { head: 'Used', figure: true, cell: (need) => amount(need.used, need) },
        { head: 'On hand', figure: true, cell: (need) => amount(need.onHand, need) },
        { head: 'To buy', figure: true, cell: (need) => packsWords(need, display) },
        { head: 'Used cost', figure: true, cell: ({ costCoins }) => money(costCoins) },
        { head: 'Packs cost', figure: true, cell: ({ packsCoins }) => money(packsCoins) },
        { head: 'Left over', figure: true, cell: (need) => amount(need.leftOver, need) },
      ]}
    />
  );
}
