/*
 * What a season must come to, reckoned with a pencil: each build takes the same few goods, so counting is enough. Nothing
 * here is of the program.
 */

/** What one build takes. */
export const perBuild = { M01: 14, M20: 2, M28: 1, PG: 5 } as const;
export type Good = keyof typeof perBuild;
export const goods: readonly Good[] = ['M01', 'M20', 'M28', 'PG'];

export const supplierOf: Readonly<Record<Good, string>> = {
  M01: 'S-hollin',
  M20: 'S-saltbarrow',
  M28: 'S-ternfield',
  PG: 'S-marlvale',
};

/** An offer: what it holds, and its price in coins. */
type Offer = readonly [holds: number, coins: number];

export interface Pencil {
  readonly offers: Record<Good, readonly [Offer, Offer]>;
  /** What stands in the store, what is to come, and what paid jobs that are not built yet were promised. */
  readonly stands: Record<Good, number>;
  readonly coming: Record<Good, number>;
  readonly promised: Record<Good, number>;
  readonly ordered: Record<Good, number>;
  readonly came: Record<Good, number>;
  readonly givenUp: Record<Good, number>;
  paid: number;
}

const nothing = (): Record<Good, number> => ({ M01: 0, M20: 0, M28: 0, PG: 0 });

/** The first day: the demo's open bag of clay and its timer, two offers of each supplier. */
export function newPencil(): Pencil {
  return {
    offers: {
      M01: [
        [10, 980],
        [45, 3150],
      ],
      M20: [
        [1, 1350],
        [5, 6000],
      ],
      M28: [
        [1, 1600],
        [10, 14_000],
      ],
      PG: [
        [1, 290],
        [1, 330],
      ],
    },
    stands: { ...nothing(), M01: 7, M28: 1 },
    coming: nothing(),
    promised: nothing(),
    ordered: nothing(),
    came: nothing(),
    givenUp: nothing(),
    paid: 0,
  };
}

/** What has still to be bought, so that every promise can be kept. */
export function lacks({ promised, stands, coming }: Pencil, good: Good): number {
  return Math.max(0, promised[good] - stands[good] - coming[good]);
}

/** The least coins for so much: every count of the small pack is tried. */
export function leastCoins({ offers }: Pencil, good: Good, amount: number): number {
  const [[small, smallCoins], [large, largeCoins]] = offers[good];
  const most = Math.ceil(amount / small);
  const sums = Array.from({ length: most + 1 }, (_, count) => {
    const rest = Math.max(0, amount - count * small);
    return count * smallCoins + Math.ceil(rest / large) * largeCoins;
  });
  return Math.min(...sums);
}

/** A rise by whole percent, half up to the coin. */
export function rise({ offers }: Pencil, good: Good, percent: number): void {
  const up = ([holds, coins]: Offer): Offer => [holds, Math.floor((coins * (100 + percent)) / 100 + 0.5)];
  const [small, large] = offers[good];
  offers[good] = [up(small), up(large)];
}
