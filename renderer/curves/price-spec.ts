import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { CurvePoint, CurveSpec, CurveWords } from './curve-spec.ts';
import { roundTicks } from './round-ticks.ts';

/** What one build of a size costs the client. */
export interface PricedSize {
  readonly size: string;
  /** Inside volume of the tank, in the unit shown. */
  readonly room: number;
  /** Tax included, in the currency. */
  readonly price: number;
}

export interface PriceWords {
  /** Unit of the volume: `L`. */
  readonly unit: string;
  readonly currency: string;
  readonly moneyDecimals: number;
  readonly decimalComma: boolean;
}

/** Size of a name, as shares of the chart's width and height. */
const NAME_WIDTH = 0.06;
const NAME_HEIGHT = 0.1;

/** Price against size over the sizes of a job; nothing with fewer than two priced sizes. */
export function priceSpec(sizes: readonly PricedSize[], words: PriceWords): CurveSpec | undefined {
  const sorted = sizes.toSorted((one, other) => one.room - other.room || one.price - other.price);
  const [dearest] = sorted.toSorted((one, other) => perRoom(other) - perRoom(one));
  const [cheapest] = sorted.toSorted((one, other) => perRoom(one) - perRoom(other));
  const last = sorted.at(-1);
  if (sorted.length < 2 || !dearest || !cheapest || !last) return undefined;
  const { unit, currency, decimalComma } = words;
  const money = (figure: number) => writeNumber(figure, words.moneyDecimals, { decimalComma });
  const room = (figure: number) => writeNumber(figure, 1, { decimalComma });
  const each = (size: PricedSize) => `${money(perRoom(size))} ${currency} in ${size.size}`;
  const title = `1 ${unit} of tank costs ${each(cheapest)}, ${each(dearest)}`;
  return {
    title,
    under: 'Price of one build, tax included, against the inside of its tank; every size with its own local values',
    label: `${title}. ${sorted.map((size) => `${size.size}, ${room(size.room)} ${unit}: ${money(size.price)} ${currency}`).join('; ')}`,
    across: { unit: `inside of the tank, ${unit}`, most: roundTicks(last.room * 1.05).at(-1) ?? 1 },
    up: {
      unit: `price, ${currency}`,
      most: roundTicks(Math.max(...sorted.map(({ price }) => price)) * 1.1).at(-1) ?? 1,
    },
    lines: [{ ink: 'muted', dashed: true, thin: true, pieces: [sorted.map(pointOf)] }],
    words: wordsOf(sorted),
    table: {
      headings: ['size', `inside, ${unit}`, `price, ${currency}`, `${currency} a ${unit}`],
      rows: sorted.map((size) => [size.size, room(size.room), money(size.price), money(perRoom(size))]),
    },
  };
}

/** Names are above their points, or below if the previous name is in the way. */
function wordsOf(sorted: readonly PricedSize[]): readonly CurveWords[] {
  const wide = (sorted.at(-1)?.room ?? 0) * NAME_WIDTH;
  const high = Math.max(...sorted.map(({ price }) => price)) * NAME_HEIGHT;
  let above: CurvePoint | undefined;
  return together(sorted).map(([at, names]) => {
    const isNear = above !== undefined && at[0] - above[0] < wide && Math.abs(at[1] - above[1]) < high;
    if (!isNear) above = at;
    return { at, words: names.join(', '), ink: 'ink', lie: 'middle', strong: true, dot: true, away: isNear ? 18 : -10 };
  });
}

function perRoom({ room, price }: PricedSize): number {
  return price / room;
}

function pointOf({ room, price }: PricedSize): CurvePoint {
  return [room, price];
}

/** Sizes at the same point share one label. */
function together(sizes: readonly PricedSize[]): readonly (readonly [CurvePoint, readonly string[]])[] {
  const groups = Map.groupBy(sizes, (size) => pointOf(size).join(' '));
  return [...groups.values()].flatMap(([first, ...others]) =>
    first ? [[pointOf(first), [first, ...others].map(({ size }) => size)] as const] : [],
  );
}
