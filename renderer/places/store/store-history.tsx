import type { BookContext } from '#renderer/books/book-api.ts';
import { Table } from '#renderer/kit/table.tsx';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import { goodsWords } from '#shared-calc/quantity/goods-words.ts';
import type { Move, Records } from '#shared-calc/records/records.ts';

/** Nobody reads more of them beside the store. */
const MOST = 40;

/** What came, went, was counted or kept of goods, the newest first. */
function historyOf({ move }: Pick<Records, 'move'>, goods: string): readonly Move[] {
  return [...move.values()]
    .filter(({ of }) => of === goods)
    .toReversed()
    .toSorted((one, other) => (one.on < other.on ? 1 : one.on > other.on ? -1 : 0));
}

/** `kept for J02`, `counted, a bag was torn`. */
function sayMove({ what, amount, job, order, note }: Move): string {
  const did = what === 'kept' && amount < 0 ? 'given back' : what;
  const whose = job === undefined ? '' : did === 'given back' ? ` by ${job}` : ` for ${job}`;
  return [`${did}${whose}`, order ?? '', note].filter((part) => part !== '').join(', ');
}

interface HistoryParts {
  readonly goods: string;
  readonly unit: string;
  readonly context: BookContext;
}

export function StoreHistory({ goods, unit, context: { records, display } }: HistoryParts) {
  const moves = historyOf(records, goods);
  const signed = ({ amount }: Move) => `${amount > 0 ? '+' : '−'}${goodsWords(Math.abs(amount), unit, display)}`;
  return (
    <section>
      <h3>What came and went</h3>
      <Table
        label={`What came and went of ${goods}`}
        rows={moves.slice(0, MOST)}
        keyOf={({ id }) => id}
        columns={[
          { head: 'Day', names: true, cell: ({ on }) => paperDay(on, display) },
          {
            head: 'What',
            cell: (move) =>
              move.what === 'kept'
                ? `${goodsWords(Math.abs(move.amount), unit, display)} ${sayMove(move)}`
                : sayMove(move),
          },
          { head: 'Amount', figure: true, cell: (move) => (move.what === 'kept' ? '' : signed(move)) },
        ]}
      />
      {moves.length > MOST && <p>And {moves.length - MOST} before.</p>}
    </section>
  );
}
