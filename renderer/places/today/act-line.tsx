import { actNames } from '#shared-calc/words/act-names.ts';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { BookContext } from '#renderer/books/book-api.ts';
import { Button } from '#renderer/kit/button.tsx';
import { ChoiceField, TextField } from '#renderer/kit/field.tsx';
import type { TodayItem } from '#shared-calc/derive/today-item.ts';
import { upperFirst } from '#shared-calc/derive/today-next.ts';
import { writeDay } from '#shared-calc/calendar/write-day.ts';
import { readDay } from '#shared-calc/read/read-day.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';
import { tickItem } from './tick-item.ts';
import type { TodayState } from './today-state.ts';
import css from './today.module.css';

interface ActParts {
  readonly item: TodayItem;
  readonly state: TodayState;
  readonly context: BookContext;
  readonly goOn: (key: string) => void;
}

/** The act of a ticked item, with day and person filled in: Enter writes it, Escape leaves it. */
export function ActLine({ item, state, context, goOn }: ActParts) {
  const { records, today, display } = context;
  const [day, setDay] = useState(writeDay(today, display.dateOrder));
  const [who, setWho] = useState(item.who);
  const [note, setNote] = useState('');
  const [wrong, setWrong] = useState<string>();
  const line = useRef<HTMLDivElement>(null);
  useEffect(() => line.current?.querySelector('input')?.focus(), []);
  const leave = () => (state.ticked.value = undefined);
  const write = () => {
    const on = said(readDay(day, 'The day', { ...context, nearest: true }));
    if (!on.ok) return setWrong(on.fault);
    const refused = tickItem(state.api, item, { on: on.value, who, note });
    setWrong(refused);
    if (refused !== undefined) return;
    goOn(item.key);
    leave();
  };
  const back = (event: KeyboardEvent) => {
    if (event.key !== 'Escape') return;
    line.current?.parentElement?.querySelector('button')?.focus();
    leave();
  };
  const people = [...records.rate.values()].filter(({ id, per }) => per === 'h' && id !== OVERHEAD);
  return (
    <div ref={line} class={css['act']} role="group" aria-label={upperFirst(item.what)} onKeyDown={back}>
      <TextField label="Done on" text={day} typing={setDay} wrong={wrong} enter={write} days={context} />
      <ChoiceField
        label="By"
        value={who}
        options={people.map(({ id, label }) => ({ value: id, label }))}
        choose={setWho}
      />
      <TextField label="What was seen" text={note} typing={setNote} enter={write} />
      <Button look="main" onClick={write}>
        Write it
      </Button>
      <Button onClick={leave}>{actNames.cancel}</Button>
    </div>
  );
}

/** The share of every hour that is nobody's own. */
const OVERHEAD = 'R-overhead';
