import { actNames } from '#shared-calc/words/act-names.ts';
import { useState } from 'preact/hooks';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { ChoiceField, Fields, TextField } from '#renderer/kit/field.tsx';
import { paperWeekday } from '#shared-calc/papers/paper-words.ts';
import { upperFirst } from '#shared-calc/derive/today-next.ts';
import type { TodayItem } from '#shared-calc/derive/today-item.ts';
import { readDay } from '#shared-calc/read/read-day.ts';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import { ok } from '#shared-calc/result.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';
import type { PartView } from './part-view.ts';
import { writeDay } from '#shared-calc/calendar/write-day.ts';
import css from './prepare.module.css';

type JobView = Omit<PartView, 'job'> & { readonly job: Job };

/** What is still to be done of a job's plan; each is ticked where it stands, with day and person filled in. */
export function OpenSteps(view: JobView) {
  const { state, job } = view;
  const [open, setOpen] = useState<string>();
  const items = state.api.due().items.filter((item) => item.job === job.id && item.source === 'steps');
  if (items.length === 0) return null;
  return (
    <section aria-label="To tick off">
      <ul class={css['openSteps']}>
        {items.map((item) => (
          <li key={item.key}>
            <button
              type="button"
              aria-label={`Tick: ${upperFirst(item.what)}`}
              aria-expanded={open === item.key}
              onClick={() => setOpen(open === item.key ? undefined : item.key)}
            />
            <span>
              {upperFirst(item.what)}, by {paperWeekday(item.day, view.context.display)}
              {item.decides && <b> decides</b>}
            </span>
            {open === item.key && <StepForm view={view} item={item} leave={() => setOpen(undefined)} />}
          </li>
        ))}
      </ul>
    </section>
  );
}

interface FormParts {
  readonly view: JobView;
  readonly item: TodayItem;
  readonly leave: () => void;
}

/** Enter writes the step as done, Escape leaves it. A note is also the reason, where something stands against the job. */
function StepForm({ view, item, leave }: FormParts) {
  const { records, today, workshop } = view.context;
  const [texts, setTexts] = useState({
    day: writeDay(today, view.context.display.dateOrder),
    who: item.who,
    minutes: '',
    note: '',
  });
  const [wrong, setWrong] = useState<string>();
  const set = (some: Partial<typeof texts>) => setTexts({ ...texts, ...some });
  const write = () => {
    const on = said(readDay(texts.day, 'The day', { ...view.context, nearest: true }));
    if (!on.ok) return setWrong(on.fault);
    const minutes = texts.minutes.trim() === '' ? ok(undefined) : said(readMeasure(texts.minutes, took, workshop));
    if (!minutes.ok) return setWrong(minutes.fault);
    const refused = tick(view, item, { on: on.value, minutes: minutes.value, who: texts.who, note: texts.note.trim() });
    setWrong(refused);
    if (refused === undefined) leave();
  };
  return (
    <div
      role="group"
      aria-label={upperFirst(item.what)}
      onKeyDown={({ key }) => {
        if (key === 'Escape') leave();
      }}
    >
      <Fields>
        <TextField
          label="Done on"
          text={texts.day}
          typing={(day) => set({ day })}
          wrong={wrong}
          enter={write}
          days={view.context}
        />
        <ChoiceField label="By" value={texts.who} options={peopleOf(records)} choose={(who) => set({ who })} />
        <TextField label="Minutes" text={texts.minutes} typing={(minutes) => set({ minutes })} enter={write} />
        <TextField label="Note" text={texts.note} typing={(note) => set({ note })} enter={write} />
      </Fields>
      <Buttons>
        <Button look="main" onClick={write}>
          Write it
        </Button>
        <Button onClick={leave}>{actNames.cancel}</Button>
      </Buttons>
    </div>
  );
}

/** The share of every hour that is nobody's own. */
const OVERHEAD = 'R-overhead';

function peopleOf({ rate }: Records) {
  const people = [...rate.values()].filter(({ id, per }) => per === 'h' && id !== OVERHEAD);
  return people.map(({ id, label }) => ({ value: id, label }));
}

const took = { name: 'The time', stored: 'min', shown: 'min', low: 0, high: 100_000 } as const;

interface Ticked {
  readonly on: string;
  readonly who: string;
  readonly minutes: number | undefined;
  readonly note: string;
}

function tick({ state, job }: JobView, { tick: act }: TodayItem, { minutes, note, ...told }: Ticked) {
  if (act.is !== 'did') return undefined;
  const { step, ends } = act;
  const noted = note === '' ? {} : { note, anyway: note };
  return state.api.doAct('did', {
    ...told,
    job: job.id,
    step,
    ends,
    ...(minutes !== undefined && { minutes }),
    ...noted,
  });
}
