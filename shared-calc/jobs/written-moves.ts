import type { LotPart } from '#shared-calc/buy/take-lots.ts';
import { added, emptyChange, type Change } from '#shared-calc/records/change.ts';
import type { Move, Records } from '#shared-calc/records/records.ts';
import { shareCoins } from '#shared-calc/trade/price/share-coins.ts';
import { freeId } from './find-job.ts';

/** What a move says beside its lot and amount. */
export interface MoveWords extends Pick<Move, 'on' | 'what'>, Partial<Pick<Move, 'job' | 'order' | 'line'>> {
  readonly coins?: number | undefined;
  readonly note?: string | undefined;
}

/** M-1, M-2 ... after the highest there is, each once. */
export function moveIds({ move }: Pick<Records, 'move'>): () => string {
  const numbers = [...move.keys()].map((id) => Number(/^M-(\d{1,9})$/.exec(id)?.[1] ?? 0));
  let last = Math.max(0, ...numbers);
  return () => `M-${(last += 1)}`;
}

/** Coins are shared by whole weights. */
const MILLION = 1e6;

/** One move for each part, below 0 unless it is kept; coins are shared by amount. */
export function partMoves(
  parts: readonly LotPart[],
  { coins, note = '', ...words }: MoveWords,
  nextId: () => string,
): readonly Move[] {
  const shares =
    coins === undefined
      ? []
      : shareCoins(
          coins,
          parts.map(({ amount }) => Math.round(amount * MILLION)),
        );
  return parts.map(({ lot, amount }, at) => {
    const share = shares[at];
    return {
      id: nextId(),
      lot: lot.id,
      of: lot.of,
      amount: words.what === 'kept' ? amount : -amount,
      ...words,
      ...(share !== undefined && { coins: share }),
      note,
    };
  });
}

/** The move that brings a lot, which is called after its goods: K-M01, K-M01-2. */
export function lotMove(records: Pick<Records, 'move' | 'tub'>, came: Omit<Move, 'id' | 'lot' | 'what'>): Move {
  const taken = { has: (id: string) => records.move.has(id) || records.tub.has(id) };
  const id = freeId(`K-${came.of}`, taken);
  return { ...came, id, lot: id, what: 'in' };
}

export function movesAdded(label: string, moves: readonly Move[]): Change {
  return { ...emptyChange(label), added: moves.map((move) => added('move', move)) };
}
