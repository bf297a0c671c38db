import type { TargetedKeyboardEvent } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { Sign } from '#renderer/frame/sign.tsx';
import { useOwnId } from '#renderer/frame/use-own-id.ts';
import { addDays, weekdayOf, type Day } from '#shared-calc/calendar/day.ts';
import { addMonths, monthWeeks } from '#shared-calc/calendar/month-weeks.ts';
import { isOpen, type WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import { monthNames, writeDay } from '#shared-calc/calendar/write-day.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { readDay } from '#shared-calc/read/read-day.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import { sayDate } from '#shared-calc/prepare/say-day.ts';
import css from './day-picker.module.css';

/** What a calendar is drawn from: today, the days that the workshop is shut, how it writes days. */
export interface Days {
  readonly today: Day;
  readonly calendar: WorkCalendar;
  readonly workshop: Pick<Workshop, 'weekStart'>;
  readonly display: Pick<Display, 'dateOrder'>;
}

interface PickerParts {
  readonly label: string;
  readonly days: Days;
  /** What stands in the field: the calendar opens there if it is a day. */
  readonly text: string;
  readonly pick: (text: string) => void;
}

/** The button of a field of a day, with the calendar that it opens; arrows, Page Up and Page Down walk in it. */
export function DayPicker({ label, days, text, pick }: PickerParts) {
  const id = useOwnId();
  const box = useRef<HTMLDivElement>(null);
  const [at, setAt] = useState<Day>();
  const open = () => {
    const read = readDay(text, label, days);
    setAt(read.ok ? read.value : days.today);
  };
  const close = () => box.current?.hidePopover();
  const choose = (day: Day) => {
    pick(writeDay(day, days.display.dateOrder));
    close();
  };
  const toggled = ({ newState }: { readonly newState: string }) => {
    if (newState === 'open') focusDay(box.current);
    else setAt(undefined);
  };
  return (
    <>
      <button
        class={css['opener']}
        type="button"
        aria-label={`Calendar for ${label}`}
        aria-haspopup="dialog"
        popovertarget={id}
        onClick={(event) => {
          placeBelow(event.currentTarget, box.current);
          open();
        }}
      >
        <Sign name="fold" />
      </button>
      <div
        ref={box}
        id={id}
        class={css['calendar']}
        popover="auto"
        role="dialog"
        aria-label={label}
        onToggle={toggled}
        onKeyDown={keepEscape}
      >
        {at !== undefined && <Month {...{ at, days, choose }} go={(day) => walk(day, setAt, box.current)} />}
      </div>
    </>
  );
}

/** Opens the calendar that stands beside a field. */
export function openCalendar(field: Element | null): void {
  field?.parentElement?.querySelector<HTMLElement>(':scope > button[aria-haspopup="dialog"]')?.click();
}

/** Alt with the arrow down opens the calendar of a field; `false` for any other key. */
export function openedByKey(event: TargetedKeyboardEvent<Element>): boolean {
  if (!event.altKey || event.key !== 'ArrowDown') return false;
  event.preventDefault();
  event.stopPropagation();
  openCalendar(event.currentTarget);
  return true;
}

interface MonthParts {
  readonly at: Day;
  readonly days: Days;
  readonly choose: (day: Day) => void;
  readonly go: (day: Day) => void;
}

const weekdays = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];

function Month({ at, days, choose, go }: MonthParts) {
  const weeks = monthWeeks(at, 1 + Math.max(0, weekdays.indexOf(days.workshop.weekStart ?? 'Monday')));
  const title = `${monthNames[Number(at.slice(5, 7)) - 1]} ${at.slice(0, 4)}`;
  return (
    <>
      <div class={css['head']}>
        <button type="button" aria-label="Month before" onClick={() => go(addMonths(at, -1))}>
          {'\u2039'}
        </button>
        <b aria-live="polite">{title}</b>
        <button type="button" aria-label="Month after" onClick={() => go(addMonths(at, 1))}>
          {'\u203a'}
        </button>
      </div>
      <table role="grid" aria-label={title} onKeyDown={(event) => walkKey(event, at, go)}>
        <thead>
          <tr>
            {weeks[0]?.map((day) => (
              <th key={day} scope="col" abbr={weekdays[weekdayOf(day) - 1]}>
                {weekdays[weekdayOf(day) - 1]?.slice(0, 2)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {weeks.map((week) => (
            <tr key={week[0]}>
              {week.map((day) => (
                <DayCell key={day} {...{ day, at, days, choose }} />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

function DayCell({ day, at, days, choose }: Omit<MonthParts, 'go'> & { readonly day: Day }) {
  const closed = !isOpen(day, days.calendar);
  return (
    <td aria-selected={day === at}>
      <button
        type="button"
        tabIndex={day === at ? 0 : -1}
        aria-label={`${sayDate(day, days.display)}${closed ? ', closed' : ''}`}
        aria-current={day === days.today ? 'date' : undefined}
        data-other={day.slice(0, 7) === at.slice(0, 7) ? undefined : true}
        data-closed={closed ? true : undefined}
        onClick={() => choose(day)}
      >
        {Number(day.slice(8))}
      </button>
    </td>
  );
}

/** Escape closes the calendar alone, not the view that it stands in. */
function keepEscape(event: KeyboardEvent): void {
  if (event.key === 'Escape') event.stopPropagation();
}

/** Where a key leads from a day; nothing for any other key. */
function walkKey(event: KeyboardEvent, at: Day, go: (day: Day) => void): void {
  const months = event.shiftKey ? 12 : 1;
  const to = {
    ArrowLeft: () => addDays(at, -1),
    ArrowRight: () => addDays(at, 1),
    ArrowUp: () => addDays(at, -7),
    ArrowDown: () => addDays(at, 7),
    PageUp: () => addMonths(at, -months),
    PageDown: () => addMonths(at, months),
  }[event.key];
  if (!to) return;
  event.preventDefault();
  event.stopPropagation();
  go(to());
}

function walk(day: Day, setAt: (day: Day) => void, box: HTMLElement | null): void {
  setAt(day);
  focusDay(box);
}

/** Once the day is drawn. */
function focusDay(box: HTMLElement | null): void {
  requestAnimationFrame(() => box?.querySelector<HTMLElement>('td [tabindex="0"]')?.focus());
}

/** Width and height of a calendar, px. */
const ROOM = { width: 240, height: 270 };

function placeBelow(button: Element, box: HTMLElement | null): void {
  const { left, bottom, top } = button.getBoundingClientRect();
  if (!box) return;
  const isRoom = bottom + ROOM.height < window.innerHeight;
  box.style.top = `${isRoom ? bottom + 2 : Math.max(0, top - ROOM.height)}px`;
  box.style.left = `${Math.max(0, Math.min(left, window.innerWidth - ROOM.width))}px`;
}
