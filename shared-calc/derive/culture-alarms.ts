import type { CultureBoard } from '#shared-calc/prepare/culture-board.ts';
import { sayDay, type SaidDays } from '#shared-calc/prepare/say-day.ts';
import { boardWarnings, sayLateCultures, type LateTerms } from '#shared-calc/prepare/say-cultures.ts';
import type { Day } from '#shared-calc/calendar/day.ts';

export interface CultureAlarm {
  readonly level: 'stop' | 'watch';
  readonly says: string;
}

/** Today's alarms of the board: what comes too late for a tub, and which tubs to start by when. */
export function cultureAlarms(
  board: CultureBoard,
  terms: LateTerms & { readonly today: Day },
): readonly CultureAlarm[] {
  return [
    ...sayLateCultures(board, terms).map((says): CultureAlarm => ({ level: 'stop', says })),
    ...startWords(board, terms),
    ...boardWarnings(board).map(({ says }): CultureAlarm => ({ level: 'watch', says })),
  ];
}

/** Tubs to start besides those that stand, and the last day to do so. */
function startWords(
  { tubs, spare, startBy, standing, kind }: CultureBoard,
  { today, display }: { readonly today: Day; readonly display: SaidDays },
): readonly CultureAlarm[] {
  if (tubs + spare === 0) return [];
  const by = startBy === undefined ? '' : startBy < today ? ' today' : ` by ${sayDay(startBy, display)}`;
  const wanted = [
    ...(tubs > 0 ? [`${tubs} ${tubs === 1 ? 'tub' : 'tubs'}`] : []),
    ...(spare > 0 ? [`${spare} spare`] : []),
  ];
  const here = standing.filter(({ is }) => is !== 'used up').length;
  const says = `Start ${wanted.join(' and ')} of ${kind.label}${by}; ${here} ${here === 1 ? 'stands' : 'stand'}.`;
  return [{ level: 'watch', says }];
}
