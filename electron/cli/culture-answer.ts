import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { SaidDays } from '#shared-calc/prepare/say-day.ts';
import { writeDay } from '#shared-calc/calendar/write-day.ts';
import { nounOf } from '#shared-calc/fields/uses.ts';
import type { CultureBoard } from '#shared-calc/prepare/culture-board.ts';
import { seedUseOf } from '#shared-calc/prepare/culture-demands.ts';
import { boardCautions, boardWarnings, sayLateCultures, type LateTerms } from '#shared-calc/prepare/say-cultures.ts';
import type { StandingTub } from '#shared-calc/prepare/standing-tub.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { cautionJson, underFigures } from './cautions-answer.ts';
import { textTable } from './text-table.ts';

/** Animals on the day asked, with what they may be from and to; null where they are not known. */
export function animalsJson({ animals, from, to, mayTake }: StandingTub): Record<string, number | null> {
  const figure = (value: number | undefined) => (value === undefined ? null : cleanNoise(value));
  return { animals: figure(animals), from: figure(from), to: figure(to), mayTake: figure(mayTake) };
}

/** The culture board as `--json` gives it. */
export function boardJson(board: CultureBoard, coinDecimals: number): Record<string, unknown> {
  const { demands, tubs, spare, startBy, founders, way, rate, starts, standing } = board;
  const perDay = (figure: number) => cleanNoise(figure * 100);
  return {
    demands,
    tubs,
    spare,
    startBy: startBy ?? null,
    founders,
    way,
    rate: rate ? { value: perDay(rate.perDay), from: perDay(rate.from), to: perDay(rate.to), unit: '%/d' } : null,
    starts,
    standing: standing.map((each) => ({ tub: each.tub, started: each.startedOn, ...animalsJson(each) })),
    fewer: board.fewer ?? null,
    late: board.late.map(({ date, short, readyOn, cups, coins, wait }) => ({
      date,
      short,
      readyOn: readyOn ?? null,
      cups,
      coins: coins === undefined ? null : coinsText(coins, coinDecimals),
      wait: wait ?? null,
    })),
    flyStarts: board.flyStarts,
    flyTubs: board.flyTubs,
    flyFirst: board.flyFirst ?? null,
    warnings: boardWarnings(board),
    cautions: boardCautions(board).map(cautionJson),
  };
}

/** The culture board as people read it. */
export function boardTable(board: CultureBoard, terms: LateTerms & { readonly display: Display }): string {
  return [
    ...wantedRows(board, terms.display),
    ...standingRows(board, terms.display),
    ...startRows(board, terms.display),
    ...flyRows(board, terms.display),
    ...sayLateCultures(board, terms),
    ...underFigures(boardWarnings(board), boardCautions(board), terms.display),
  ].join('\n');
}

function wantedRows({ kind, demands, flyStarts }: CultureBoard, { dateOrder }: SaidDays): readonly string[] {
  if (demands.length === 0) {
    return flyStarts === 0 ? [`No build asks for ${kind.label}, and no flies are wanted.`] : [];
  }
  const rows = demands.map(({ date, animals }) => [writeDay(date, dateOrder), String(animals)]);
  return [textTable(['build', `${kind.label} (${nounOf(seedUseOf(kind))})`], rows, [1]), ''];
}

function standingRows({ standing }: CultureBoard, { dateOrder }: SaidDays): readonly string[] {
  if (standing.length === 0) return [];
  const shown = (animals: number | undefined) => (animals === undefined ? 'not known' : String(Math.floor(animals)));
  const rows = standing.map(({ tub, startedOn, animals, mayTake }) => [
    tub,
    writeDay(startedOn, dateOrder),
    shown(animals),
    shown(mayTake),
  ]);
  return [textTable(['tub', 'started', 'animals', 'may give'], rows, [2, 3]), ''];
}

function startRows(
  { demands, tubs, spare, startBy, founders, starts, fewer }: CultureBoard,
  { dateOrder }: SaidDays,
): readonly string[] {
  if (demands.length === 0) return [];
  const first = startBy === undefined ? '' : writeDay(startBy, dateOrder);
  const by = tubs > 0 ? `, start by ${first}, ${founders} animals to a tub` : '';
  const rows = starts.map((start, at) => [`tub ${at + 1}`, writeDay(start, dateOrder)]);
  return [
    `tubs ${tubs}, spare ${spare}${by}`,
    ...(rows.length > 0 ? [textTable(['', 'start by'], rows)] : []),
    ...(fewer ? [`or ${fewer.tubs}, all started by ${writeDay(fewer.startBy, dateOrder)}`] : []),
  ];
}

function flyRows({ flyStarts, flyTubs, flyFirst }: CultureBoard, { dateOrder }: SaidDays): readonly string[] {
  return [
    ...(flyFirst
      ? [`flies: ${flyFirst.tubs} tubs set up on ${writeDay(flyFirst.on, dateOrder)} for the first week`]
      : []),
    ...(flyStarts > 0 ? [`flies: ${flyStarts} tubs set up a week, ${flyTubs} on the shelf`] : []),
  ];
}
