import type { Day } from '#shared-calc/calendar/day.ts';
import type { CultureBoard } from '#shared-calc/prepare/culture-board.ts';
import { sayLateCultures } from '#shared-calc/prepare/culture-board.ts';
import { sayDay } from '#shared-calc/prepare/say-day.ts';
import type { JobDemand } from './kind-demands.ts';
import { tubsInTime, type StandingTub } from '#shared-calc/prepare/tub-days.ts';

export interface CultureAlarm {
  readonly level: 'stop' | 'watch';
  readonly says: string;
}

/**
 * Today's alarms of the board: a demand that no tub started now can serve, and whether an existing tub serves it; how
 * many tubs to start and by when; too few tubs.
 */
export function cultureAlarms(
  board: CultureBoard,
  standing: readonly StandingTub[],
  { demands, today }: { readonly demands: readonly JobDemand[]; readonly today: Day },
): readonly CultureAlarm[] {
  const late = sayLateCultures(board);
  const told = board.late.map(({ date }, at): CultureAlarm => {
    const jobs = demands.filter((demand) => demand.date === date).map(({ job }) => job);
    const wanted = board.harvests.filter((harvest) => harvest.date === date).length;
    const ready = tubsInTime(standing, date, jobs);
    if (ready.length >= wanted) {
      return { level: 'watch', says: `${sayDay(date)}: too late to start a tub, but ${listOf(ready)} will be ready.` };
    }
    const short =
      ready.length === 0
        ? 'and none stands that is ready then'
        : `and only ${listOf(ready)} will be ready, of ${wanted} wanted`;
    return { level: 'stop', says: `${(late[at] ?? '').replace(/;.*$/, '')}, ${short}.` };
  });
  return [...told, ...startWords(board, standing, today)];
}

function listOf(tubs: readonly StandingTub[]): string {
  return tubs.map(({ tub }) => tub.id).join(', ');
}

/** Tubs to start besides the existing ones, and the last day to do so. */
function startWords(
  { tubs, spare, tubStarts, kind }: CultureBoard,
  standing: readonly StandingTub[],
  today: Day,
): readonly CultureAlarm[] {
  const here = standing.filter(({ is }) => is !== 'used up').length;
  const missing = tubs + spare - here;
  if (tubs === 0 || missing <= 0) return [];
  const next = tubStarts.find((start) => start >= today);
  const by = next === undefined ? 'today' : `by ${sayDay(next)}`;
  return [
    {
      level: 'watch',
      says: `${tubs} ${tubs === 1 ? 'tub' : 'tubs'} and ${spare} spare of ${kind.label.toLowerCase()} are wanted, ${here} ${here === 1 ? 'stands' : 'stand'}: start ${missing} ${by}.`,
    },
  ];
}
