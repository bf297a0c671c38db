import { CodedName } from '#renderer/kit/coded-name.tsx';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { unitWords } from '#shared-calc/quantity/unit-words.ts';
import { Flag } from '#renderer/kit/flag.tsx';
import { Table, type Column } from '#renderer/kit/table.tsx';
import { packList } from '#shared-calc/papers/needs-csv.ts';
import { sumLabel } from '#shared-calc/papers/quote-part.ts';
import { showValue, shownUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import type { Job, Workshop } from '#shared-calc/records/records.ts';
import type { NeedRow, NeedsView } from './needs-view.ts';
import css from './needs.module.css';

export interface NeedsTableParts {
  readonly view: NeedsView;
  readonly columns: readonly { readonly key: string; readonly count: number }[];
  readonly basis: Job['basis'];
  readonly workshop: Workshop;
  readonly display: Display;
}

/** What the job uses and what to buy, a material a row. */
export function NeedsTable({ view: { list, groups }, columns: sizes, basis, workshop, display }: NeedsTableParts) {
  const money = (coins: number) => showCoins(coins, workshop);
  const amount = (of: (row: NeedRow) => number) => (row: NeedRow) => {
    const found = of(row);
    const { unit } = row.need;
    return found > 1e-9 ? showValue(toBase(found, unitOf(unit)), unit, display) : '';
  };
  const costed = (which: Job['basis']) => (which === basis ? css['counts'] : undefined);
  const columns: readonly Column<NeedRow>[] = [
    { head: 'Material', names: true, cell: ({ need }) => <Material need={need} /> },
    ...sizes.map(({ key, count }) => ({
      head: count === 1 ? key : `${key} × ${count}`,
      figure: true,
      cell: amount(({ bySize }) => bySize.get(key) ?? 0),
    })),
    { head: 'Used', figure: true, look: css['used'], cell: amount(({ need }) => need.used) },
    { head: 'Unit', cell: ({ need }) => unitWords(shownUnit(need.unit, display), display.currency) },
    { head: 'In the store', figure: true, cell: amount(({ need }) => need.onHand) },
    { head: 'Buy', cell: ({ need }) => buyWords(need) },
    {
      head: `Used cost, ${workshop.currency}`,
      figure: true,
      look: costed('used'),
      cell: ({ need }) => (need.lacks ? '' : money(need.costCoins)),
    },
    {
      head: `Packs cost, ${workshop.currency}`,
      figure: true,
      look: costed('packs'),
      cell: ({ need }) => (need.lacks ? '' : money(need.packsCoins)),
    },
    { head: 'Left over', figure: true, cell: amount(({ need }) => (need.lacks ? 0 : need.leftOver)) },
  ];
  const together = { span: sizes.length + 5, says: sumLabel('Together', list) };
  return (
    <Table
      look="ledger"
      class={css['needsTable']}
      label="What is needed"
      columns={columns}
      groups={groups.map(({ label, rows }) => ({ key: label, head: label, rows }))}
      keyOf={({ need }) => need.material}
      foot={[{ cells: [together, money(list.totalCoins), money(list.packsTotalCoins), ''] }]}
    />
  );
}

function Material({ need }: Pick<NeedRow, 'need'>) {
  return (
    <>
      <CodedName code={need.material} label={need.label} />
      {need.oldPrice && (
        <Flag state="old" sign="old" after>
          old price
        </Flag>
      )}
      {need.guess && (
        <Flag state="needs" sign="need" after>
          a guess
        </Flag>
      )}
    </>
  );
}

function buyWords(need: NeedRow['need']): string {
  if (need.lacks) return 'no price yet';
  if (need.sale === 'own') return 'our own';
  if (need.packs.length === 1 && need.packs[0]?.amount === 1 && need.unit === 'each')
    return String(need.packs[0].count);
  const words = packList(need).replaceAll(' x ', ' × ').replaceAll(' each', '');
  return words || 'nothing: the store has it';
}
