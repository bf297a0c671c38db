import { benchHand, type BenchGridParts } from './bench-hand.ts';
import { listenOnBench } from './bench-listen.ts';
import { single } from './range.ts';
import type { Spot } from './range.ts';
import type { BenchView, BoxPlace } from './view-model.ts';

export interface BenchGrid {
  /** Shows another view: only boxes that changed are painted anew. */
  readonly show: (view: BenchView) => void;
  /** Chooses a line's box, brings it into sight and gives it the keyboard. */
  readonly go: (place: BoxPlace) => void;
  /** The same, but the keyboard stays where it is. */
  readonly bring: (place: BoxPlace) => void;
  readonly destroy: () => void;
}

/** The bench's grid: one line a row, one size a column, ranges, clipboard and keys of its own. */
export function benchGrid(parts: BenchGridParts): BenchGrid {
  const hand = benchHand(parts);
  const stop = listenOnBench(parts.host, hand);
  parts.measured(hand.table.metrics());
  const at = ({ row, column }: BoxPlace, run: (spot: Spot) => void) => {
    const spot = hand.desk().positions.spotOf(row, column);
    if (spot) run(spot);
  };
  return {
    show: hand.show,
    go: (place) => at(place, (spot) => hand.take(single(spot))),
    bring: (place) => at(place, hand.bring),
    destroy: () => {
      stop();
      hand.destroy();
    },
  };
}
