import { addDays, weekdayOf, type Day } from '#shared-calc/calendar/day.ts';
import type { TodayItem } from '#shared-calc/derive/today-item.ts';

const SUNDAY = 7;
/** Days that the list looks ahead, as the picture beside it. */
export const SIX_WEEKS = 42;

export interface DaySection {
  readonly title: 'Overdue' | 'Today' | 'This week' | 'Next week' | 'Later';
  readonly items: readonly TodayItem[];
}

/** Items by when they are due, in their order; sections without any are left out. */
export function daySections(items: readonly TodayItem[], today: Day): readonly DaySection[] {
  const sunday = addDays(today, SUNDAY - weekdayOf(today));
  const last = addDays(today, SIX_WEEKS);
  const titleOf = ({ day, late }: TodayItem): DaySection['title'] => {
    if (late > 0) return 'Overdue';
    if (day <= today) return 'Today';
    if (day <= sunday) return 'This week';
    return day <= addDays(sunday, SUNDAY) ? 'Next week' : 'Later';
  };
  const near = items.filter(({ day }) => day <= last);
  return (['Overdue', 'Today', 'This week', 'Next week', 'Later'] as const)
    .map((title) => ({ title, items: near.filter((item) => titleOf(item) === title) }))
    .filter((section) => section.items.length > 0);
}
