import type { BookContext } from '#renderer/books/book-api.ts';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { isPart, sumLabel } from '#shared-calc/papers/quote-part.ts';
import { Table } from '#renderer/kit/table.tsx';
import type { ShoppingRun } from '#shared-calc/buy/shopping-run.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { ChosenRun } from '#shared-calc/buy/chosen-packs.ts';
import css from './run.module.css';

interface SumsParts {
  readonly run: ChosenRun;
  /** The same run at its best. */
  readonly best: ShoppingRun;
  readonly jobs: number;
  readonly context: BookContext;
}

/** The cost of buying together, and the saving against buying for each job alone, in goods and landed. */
export function RunSums({ run, best, jobs, context: { workshop } }: SumsParts) {
  const money = (coins: number) => showCoins(coins, workshop);
  const saved = (alone: number, together: number) =>
    `${money(alone - together)}${alone > 0 ? ` (${writeNumber(((alone - together) / alone) * 100, 1, workshop)}\u00a0%)` : ''}`;
  const row = (what: string, together: number, alone: number): SumRow => ({
    what: sumLabel(what, run),
    together: money(together),
    // Sums that are not whole cannot be compared.
    ...(!isPart(run) && { alone: money(alone), saved: saved(alone, together) }),
  });
  const over = run.landedTogetherCoins - best.landedTogetherCoins;
  const landed = row('Landed, with carriage', run.landedTogetherCoins, run.landedAloneCoins);
  const byHand: SumRow = {
    what: 'Packs by hand against the least goods',
    together: `${over > 0 ? '+' : ''}${money(over)}`,
  };
  return (
    <Table
      class={css['runSums']}
      caption={jobs === 1 ? 'One job' : `${jobs} jobs bought together`}
      rows={[row('Goods', run.togetherCoins, run.aloneCoins), landed, ...(over === 0 ? [] : [byHand])]}
      keyOf={({ what }) => what}
      mark={(each) => (each === landed ? 'sum' : undefined)}
      columns={[
        { names: true, cell: ({ what }) => what },
        { head: `together, ${workshop.currency}`, figure: true, cell: ({ together }) => together },
        { head: 'each alone', figure: true, cell: ({ alone }) => alone },
        { head: 'saved', figure: true, cell: (each) => each.saved },
      ]}
    />
  );
}

interface SumRow {
  readonly what: string;
  readonly together: string;
  readonly alone?: string;
  readonly saved?: string;
}
