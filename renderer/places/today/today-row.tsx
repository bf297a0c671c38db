import type { BookContext } from '#renderer/books/book-api.ts';
import { Sign } from '#renderer/frame/sign.tsx';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { Flag } from '#renderer/kit/flag.tsx';
import type { TodayItem } from '#shared-calc/derive/today-item.ts';
import { upperFirst } from '#shared-calc/derive/today-next.ts';
import { sayDay, sayDays, type SaidDays } from '#shared-calc/prepare/say-day.ts';
import { ActLine } from './act-line.tsx';
import { itemLink } from './item-link.ts';
import { whoLabel, whomOf } from './item-words.ts';
import { isWritten } from './tick-item.ts';
import type { TodayState } from './today-state.ts';
import css from './today.module.css';

interface RowParts {
  readonly item: TodayItem;
  readonly state: TodayState;
  readonly context: BookContext;
  /** The keyboard goes on from an item that is done. */
  readonly goOn: (key: string) => void;
}

/** What is to be done, why, for whom, by whom and when; its tick opens the act. */
export function TodayRow({ item, state, context, goOn }: RowParts) {
  const { records } = context;
  const { key, what, why, who, job, client, decides } = item;
  const isOpen = state.ticked.value === key;
  const link = itemLink(item, records);
  const tick = () => {
    if (isWritten(item)) state.ticked.value = isOpen ? undefined : key;
    else location.hash = link;
  };
  return (
    <li class={css['row']} data-state={item.late > 0 ? 'late' : undefined}>
      <button
        class={css['tick']}
        type="button"
        data-item={key}
        aria-label={`${isWritten(item) ? 'Tick' : 'Go to'}: ${upperFirst(what)}, ${whomOf(item, records)}`}
        aria-expanded={isWritten(item) ? isOpen : undefined}
        onClick={tick}
      >
        {!isWritten(item) && <Sign name="step" />}
      </button>
      <p>
        <a class={css['what']} href={link}>
          {upperFirst(what)}
        </a>{' '}
        {decides && (
          <Flag state="watch" after>
            decides
          </Flag>
        )}
        <small>{why}</small>
      </p>
      <p class={css['whom']}>
        {job === undefined ? whomOf(item, records) : <a href={writeRoute('jobs', job)}>{whomOf(item, records)}</a>}
        {client !== undefined && <small>{client}</small>}
      </p>
      <p>{whoLabel(who, records)}</p>
      <When item={item} context={context} />
      {isOpen && <ActLine item={item} state={state} context={context} goOn={goOn} />}
    </li>
  );
}

function When({
  item: { day, late },
  context: { today, display },
}: Pick<RowParts, 'context'> & { readonly item: TodayItem }) {
  if (late > 0) {
    return (
      <p class={css['when']}>
        <Flag state="stop" sign="stop">
          {sayDays(late)} late
        </Flag>
        <small>since {shortDay(day, display)}</small>
      </p>
    );
  }
  return <p class={css['when']}>{day === today ? 'today' : shortDay(day, display)}</p>;
}

/** `Wed 10 March`, `Wed, March 10` */
function shortDay(day: string, days: SaidDays): string {
  return sayDay(day, days).replace(/^(\w{3})\w*/, '$1');
}
