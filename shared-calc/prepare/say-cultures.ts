import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { Decides } from '#shared-calc/cautions/deciders.ts';
import type { Warning } from '#shared-calc/cautions/warning.ts';
import { sayDay, type SaidDays } from './say-day.ts';
import type { CultureBoard } from './culture-board.ts';
import { isFlies, seedUseOf } from './culture-demands.ts';
import type { CultureKind } from '#shared-calc/records/records.ts';
import { cultureActs } from '#shared-calc/cautions/acts.ts';
import { cautionsBeside, eachOnce, sayCaution, type SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import { cautionsOf } from './act-cautions.ts';
import type { LateCulture } from './late-cultures.ts';

/** An amount of money as the workshop writes it. */
export type WriteCoins = (coins: number) => string;

/** How a demand that comes too late is said. */
export interface LateTerms {
  readonly coins: WriteCoins;
  readonly display: SaidDays;
}

/** How a demand that comes too late is said. */
export interface LateTerms {
  readonly coins: WriteCoins;
  readonly display: SaidDays;
}

/** Demands that come too late for a tub, each with what could be done instead. */
export function sayLateCultures(board: CultureBoard, { coins, display }: LateTerms): readonly string[] {
  return board.late.map((late) => {
    const { date, short, readyOn } = late;
    const ready =
      readyOn === undefined
        ? 'no tub started today gives that'
        : `a tub started today gives that on ${sayDay(readyOn, display)}`;
    const what = `${board.kind.label} for ${sayDay(date, display)}: ${writeNumber(short, 0)} short, ${ready}.`;
    return `${what} Instead: ${insteadOf(late, board, coins).join(', or ')}.`;
  });
}

function insteadOf({ cups, coins, wait }: LateCulture, { kind }: CultureBoard, write: WriteCoins): readonly string[] {
  const one = seedUseOf(kind) === 'springtailSeed' ? 'cup' : 'portion of ten';
  const price = coins === undefined ? 'price not known yet' : write(coins);
  return [
    `${cups} ${cups === 1 ? one : one.replace(/^\w+/, '$&s')}, ${price}`,
    ...(wait === undefined ? [] : [`seed with what there is and wait ${wait} d more`]),
  ];
}

/** What a grower must know beside the figures of a board, and who decides. */
export function boardWarnings({ kind, rate, nothingToSplit }: CultureBoard): readonly Warning[] {
  const decides: Decides = 'Grower';
  const percent = (perDay: number) => writeNumber(perDay * 100, 1);
  const ranged = rate !== undefined && rate.to - rate.from > 1e-12;
  return [
    ...(nothingToSplit
      ? [
          {
            says: `No tub of ${kind.label} stands to split: start a new line, or buy the starter animals.`,
            decides,
          },
        ]
      : []),
    ...(ranged
      ? [
          {
            says: `Growth at this temperature is ${percent(rate.perDay)} % a day, perhaps ${percent(rate.from)} to ${percent(rate.to)}: count the tubs.`,
            decides,
          },
        ]
      : []),
  ];
}

/** What to mind with a culture of this kind. */
export function cultureCautions(kind: CultureKind): readonly SaidCaution[] {
  if (isFlies(kind)) return cautionsOf(cultureActs.flies);
  return [...cautionsOf(cultureActs.tubs), ...cautionsBeside(seedUseOf(kind)).map((id) => sayCaution(id))];
}

/** What to mind with the cultures of a board; flies may be wanted beside another kind. */
export function boardCautions({ kind, flyStarts }: CultureBoard): readonly SaidCaution[] {
  return eachOnce([...cultureCautions(kind), ...(flyStarts > 0 ? cautionsOf(cultureActs.flies) : [])]);
}
