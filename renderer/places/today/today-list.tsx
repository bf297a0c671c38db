import { useRef } from 'preact/hooks';
import type { BookContext } from '#renderer/books/book-api.ts';
import { afterFrame } from '#renderer/frame/after-frame.ts';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Muted } from '#renderer/kit/muted.tsx';
import { ScrollPage } from '#renderer/kit/scroll-page.tsx';
import type { DueNow } from '#renderer/store/due-store.ts';
import { walkOver } from '#renderer/kit/walk-links.ts';
import { readyForFirstQuote } from '#shared-calc/derive/start-list.ts';
import type { TodayItem } from '#shared-calc/derive/today-item.ts';
import { daySections, type DaySection } from './day-sections.ts';
import { FirstQuote } from './first-quote.tsx';
import { StartList } from './start-list.tsx';
import type { TodayState } from './today-state.ts';
import { TodayRow } from './today-row.tsx';
import css from './today.module.css';

interface ListParts {
  readonly state: TodayState;
  readonly items: readonly TodayItem[];
  readonly due: DueNow;
  readonly context: BookContext;
}

/** Everything to do, by when it is due. Up and Down go from tick to tick. */
export function TodayList({ state, items, due: { isBehind, start }, context }: ListParts) {
  const list = useRef<HTMLDivElement>(null);
  const sections = daySections(items, context.today);
  const ready = start.length > 0 ? [] : readyForFirstQuote(context);
  /** The next row takes the place of one that is done, after the key that wrote it: it would press its tick, too. */
  const goOn = (key: string) => {
    const ticks = [...(list.current?.querySelectorAll<HTMLElement>('[data-item]') ?? [])];
    const at = ticks.findIndex((tick) => tick.dataset['item'] === key);
    const next = ticks[at + 1] ?? ticks[at - 1];
    afterFrame(() => next?.focus());
  };
  return (
    <ScrollPage label="What is to be done">
      <div ref={list} onKeyDown={(event) => walkOver(event, '[data-item]')}>
        {start.length > 0 && <StartList api={state.api} entries={start} isBehind={isBehind} context={context} />}
        {ready.length > 0 && <FirstQuote jobs={ready} context={context} />}
        {sections.map((section) => (
          <Section key={section.title} section={section} state={state} context={context} goOn={goOn} />
        ))}
        {sections.length + start.length + ready.length === 0 && <Nothing isBehind={isBehind} />}
      </div>
    </ScrollPage>
  );
}

interface SectionParts extends Pick<ListParts, 'state' | 'context'> {
  readonly section: DaySection;
  readonly goOn: (key: string) => void;
}

function Section({ section: { title, items }, ...parts }: SectionParts) {
  return (
    <section class={css['section']}>
      <h2>
        {title} <Muted small>{items.length}</Muted>
      </h2>
      <ul>
        {items.map((item) => (
          <TodayRow key={item.key} item={item} {...parts} />
        ))}
      </ul>
    </section>
  );
}

function Nothing({ isBehind }: Pick<DueNow, 'isBehind'>) {
  if (isBehind) return <EmptyNote>Working</EmptyNote>;
  return <EmptyNote>Nothing to do in the next six weeks: no fact of a job, an order or a tub asks for it.</EmptyNote>;
}
