import { Fragment } from 'preact';
import { showCoins } from '#renderer/books/money-field.ts';
import { unitWords } from '#shared-calc/quantity/unit-words.ts';
import { Flag } from '#renderer/kit/flag.tsx';
import { packList } from '#shared-calc/papers/needs-csv.ts';
import { showValue, shownUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import type { Job, Workshop } from '#shared-calc/records/records.ts';
import type { NeedRow, NeedsView } from './needs-view.ts';

export interface NeedsTableParts {
  readonly view: NeedsView;
  readonly columns: readonly { readonly key: string; readonly count: number }[];
  readonly basis: Job['basis'];
  readonly workshop: Workshop;
  readonly display: Display;
}

/** What the job uses and what is to be bought, a material a row. */
export function NeedsTable({ view: { list, groups }, columns, basis, workshop, display }: NeedsTableParts) {
  const money = (coins: number) => showCoins(coins, workshop);
  const counts = (which: Job['basis']) => (which === basis ? 'n counts' : 'n');
  const before = columns.length + 5;
  return (
    <table class="needs-table">
      <Heads columns={columns} counts={counts} currency={workshop.currency} />
      <tbody>
        {groups.map(({ label, rows }) => (
          <Fragment key={label}>
            <tr class="need-group">
              <th scope="rowgroup" colSpan={before + 3}>
                {label}
              </th>
            </tr>
            {rows.map((row) => (
              <Need
                key={row.need.material}
                row={row}
                columns={columns}
                counts={counts}
                money={money}
                display={display}
              />
            ))}
          </Fragment>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row" colSpan={before}>
            Together
          </th>
          <td class={counts('used')}>{money(list.totalCoins)}</td>
          <td class={counts('packs')}>{money(list.packsTotalCoins)}</td>
          <td />
        </tr>
      </tfoot>
    </table>
  );
}

interface HeadsParts {
  readonly columns: NeedsTableParts['columns'];
  readonly counts: (which: Job['basis']) => string;
  readonly currency: string;
}

function Heads({ columns, counts, currency }: HeadsParts) {
  const heads: readonly (readonly [title: string, look: string])[] = [
    ['Material', ''],
    ...columns.map(({ key, count }) => [count === 1 ? key : `${key} × ${count}`, 'n'] as const),
    ['Used', 'n'],
    ['Unit', ''],
    ['In the store', 'n'],
    ['Buy', ''],
    [`Used cost, ${currency}`, counts('used')],
    [`Packs cost, ${currency}`, counts('packs')],
    ['Left over', 'n'],
  ];
  return (
    <thead>
      <tr>
        {heads.map(([title, look]) => (
          <th key={title} scope="col" class={look}>
            {title}
          </th>
        ))}
      </tr>
    </thead>
  );
}

interface NeedParts {
  readonly row: NeedRow;
  readonly columns: NeedsTableParts['columns'];
  readonly counts: (which: Job['basis']) => string;
  readonly money: (coins: number) => string;
  readonly display: Display;
}

function Need({ row: { need, bySize }, columns, counts, money, display }: NeedParts) {
  const say = (amount: number) =>
    amount > 1e-9 ? showValue(toBase(amount, unitOf(need.unit)), need.unit, display) : '';
  return (
    <tr>
      <th scope="row">
        <span class="code">{need.material}</span> {need.label}
        {need.oldPrice && (
          <Flag state="old" sign="old" after>
            old price
          </Flag>
        )}
      </th>
      {columns.map(({ key }) => (
        <td key={key} class="n">
          {say(bySize.get(key) ?? 0)}
        </td>
      ))}
      <td class="n used">{say(need.used)}</td>
      <td>{unitWords(shownUnit(need.unit, display), display.currency)}</td>
      <td class="n">{say(need.onHand)}</td>
      <td>{buyWords(need)}</td>
      <td class={counts('used')}>{money(need.costCoins)}</td>
      <td class={counts('packs')}>{money(need.packsCoins)}</td>
      <td class="n">{say(need.leftOver)}</td>
    </tr>
  );
}

function buyWords(need: NeedRow['need']): string {
  if (need.sale === 'own') return 'our own';
  if (need.packs.length === 1 && need.packs[0]?.amount === 1 && need.unit === 'each')
    return String(need.packs[0].count);
  const words = packList(need).replaceAll(' x ', ' × ').replaceAll(' each', '');
  return words || 'nothing: the store has it';
}
