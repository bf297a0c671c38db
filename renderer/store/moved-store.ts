import { effect, signal, untracked, type ReadonlySignal } from '@preact/signals';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { sayMoved } from '#shared-calc/words/say-moved.ts';
import type { BenchSession, OpenedBench } from './bench-session.ts';
import type { BookStore } from './book-store.ts';
import type { Clock } from './clock.ts';
import { money } from './foot-boxes.ts';
import { movedFigures, type MovedFigures } from './moved-figures.ts';

interface Parts {
  readonly session: Pick<BenchSession, 'opened'>;
  readonly display: ReadonlySignal<Display>;
  readonly clock: Clock;
  readonly tell: BookStore['tellMoved'];
}

export type MovedCells = MovedFigures['cells'];

const none: MovedCells = new Map();

/** After each edit, behind its first frame: one line of what it moved, and the cells to be marked until the next. */
export function movedStore({ session, display, clock, tell }: Parts): {
  readonly cells: ReadonlySignal<MovedCells>;
  readonly close: () => void;
} {
  const cells = signal<MovedCells>(none);
  const compare = (opened: OpenedBench) => {
    const { worked, shown } = opened;
    const size = (key: string) => worked.source().columns.find((column) => column.key === key) ?? {};
    const moved = movedFigures(worked, worked.before(), (key) => shown.facesIn(size(key)));
    cells.value = moved?.cells ?? none;
    tell(moved ? sayMoved(moved.facts, (coins) => money(coins, display.peek())) : '');
  };
  let last: unknown;
  const close = effect(() => {
    const opened = session.opened.value;
    void opened?.worked.version.value;
    const before = opened?.worked.before();
    if (before === last) return;
    last = before;
    if (!opened || !before || before.size === 0) {
      untracked(() => {
        cells.value = none;
        tell('');
      });
      return;
    }
    clock.soon(() => {
      if (session.opened.peek() === opened && opened.worked.before() === before) compare(opened);
    });
  });
  return { cells, close };
}
