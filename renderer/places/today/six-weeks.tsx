import type { BookContext } from '#renderer/books/book-api.ts';
import { Plate } from '#renderer/curves/plate.tsx';
import { Sign } from '#renderer/frame/sign.tsx';
import { Hint } from '#renderer/kit/note.tsx';
import { SidePanel } from '#renderer/kit/side-panel.tsx';
import { addDays, daysBetween } from '#shared-calc/calendar/day.ts';
import type { TodayItem } from '#shared-calc/derive/today-item.ts';
import { upperFirst } from '#shared-calc/derive/today-next.ts';
import { sayDay, sayDayAlone, type SaidDays } from '#shared-calc/prepare/say-day.ts';
import { SIX_WEEKS } from './day-sections.ts';
import { whomOf } from './item-words.ts';
import css from './today.module.css';
import { firstMonday, weekBands, type WeekBand, type WeekMark } from './week-bands.ts';

/** Jobs that are drawn; a longer list is in the table. */
const MOST = 30;

interface WeeksParts {
  readonly items: readonly TodayItem[];
  readonly context: BookContext;
}

/** The next six weeks over all jobs: goods above, work below, each mark with its word. */
export function SixWeeks({ items, context }: WeeksParts) {
  const { today, records, display } = context;
  const monday = firstMonday(today);
  const bands = weekBands(items, context);
  const near = items.filter(({ day }) => daysBetween(monday, day) < SIX_WEEKS);
  return (
    <SidePanel label="The next six weeks">
      <Plate
        title="Six weeks, all jobs"
        under="Goods above, work below; dotted is settle-in. Days as forecast this morning."
        table={{
          headings: ['day', 'for', 'what'],
          rows: near.map((item) => [sayDay(item.day, display), whomOf(item, records), upperFirst(item.what)]),
        }}
      >
        <div class={css['bands']}>
          <Weeks monday={monday} days={display} />
          <i class={css['now']} style={{ left: share(daysBetween(monday, today) + 0.5) }} aria-hidden="true" />
          <ul>
            {bands.slice(0, MOST).map((band) => (
              <Band key={band.key} band={band} />
            ))}
          </ul>
        </div>
        {bands.length === 0 && <Hint>No job has anything to do in these weeks.</Hint>}
        {bands.length > MOST && <Hint>{bands.length - MOST} more jobs stand in the table.</Hint>}
      </Plate>
    </SidePanel>
  );
}

function share(days: number): string {
  return `${(days / SIX_WEEKS) * 100}%`;
}

const WEEKS = [0, 1, 2, 3, 4, 5] as const;

/** The Mondays; the first, and the first of each month, with its month. */
function Weeks({ monday, days }: { readonly monday: string; readonly days: SaidDays }) {
  return (
    <div class={css['weeks']} aria-hidden="true">
      {WEEKS.map((week) => {
        const day = addDays(monday, week * 7);
        const isNamed = week === 0 || Number(day.slice(8)) <= 7;
        return <span key={week}>{isNamed ? sayDayAlone(day, days) : Number(day.slice(8))}</span>;
      })}
    </div>
  );
}

function Band({ band: { name, says, isLate, lanes, settle } }: { readonly band: WeekBand }) {
  return (
    <li class={css['band']}>
      <h3>
        {name}{' '}
        <span>
          {isLate && <Sign name="watch" />} {says}
        </span>
      </h3>
      {lanes.map(
        (rows, nth) =>
          rows.length > 0 && (
            <div key={nth} class={css['lane']} style={{ height: `${rows.length * 0.9375}rem` }}>
              {nth === 1 && settle && (
                <i
                  class={css['wait']}
                  data-form="settle"
                  style={{ left: share(settle.from), width: share(settle.to - settle.from) }}
                />
              )}
              {rows.map((marks, row) => marks.map((mark) => <Mark key={mark.key} mark={mark} row={row} />))}
            </div>
          ),
      )}
    </li>
  );
}

function Mark({ mark: { at, word, form, late, isBack }, row }: { readonly mark: WeekMark; readonly row: number }) {
  const side = isBack ? { right: share(SIX_WEEKS - at - 1) } : { left: share(at) };
  return (
    <span
      class={css['mark']}
      data-form={form}
      data-back={isBack ? '' : undefined}
      data-state={late ? 'late' : undefined}
      style={{ top: `${row * 0.9375}rem`, ...side }}
    >
      {word}
    </span>
  );
}
