import { actNames } from '#shared-calc/words/act-names.ts';
import { useMemo } from 'preact/hooks';
import type { BookContext } from '#renderer/books/book-api.ts';
import { SettledField, Fields } from '#renderer/kit/field.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import { Hint } from '#renderer/kit/note.tsx';
import { figureWords, readUnits, shownUnitWords } from '#shared-calc/quantity/figure-words.ts';
import { shownUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { fromBase, toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { withRange } from '#shared-calc/bench/range-words.ts';
import { sizesOf } from '#shared-calc/jobs/job-sheet.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { houseLessons, plantLesson } from '#shared-calc/derive/house-lessons.ts';
import { jobTook, type TookRow } from '#shared-calc/derive/job-took.ts';
import { Lessons } from './lessons.tsx';
import { TeachFromWatch } from './teach-from-watch.tsx';
import { OpenAJob } from './open-a-job.tsx';
import type { PrepareState } from './prepare-state.ts';
import type { PartView } from './part-view.ts';
import css from './prepare.module.css';
import look from '#renderer/kit/part-page.module.css';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';

/** What a job used compared with the plan, and what the last five jobs could teach the house. */
export function TookPart({ state, context, job }: PartView) {
  const worked = context.job(job?.id ?? '');
  if (!job || !worked) return <OpenAJob context={context} part="took" />;
  const took = jobTook(context, worked);
  return (
    <>
      <div class={look['twoColumns']}>
        <Taken title="Minutes by task" rows={took.minutes} state={state} context={context} job={job} />
        <div>
          <Taken title="What went in" rows={took.goods} state={state} context={context} job={job} />
          <Taken title="After the handover" rows={took.after} state={state} context={context} job={job} />
        </div>
      </div>
      <TeachTheHouse state={state} context={context} job={job} />
      <TeachFromWatch state={state} context={context} job={job} />
    </>
  );
}

interface TakenParts {
  readonly title: string;
  readonly rows: readonly TookRow[];
  readonly state: PrepareState;
  readonly context: BookContext;
  readonly job: Job;
}

function Taken({ title, rows, state, context, job }: TakenParts) {
  const { display, workshop } = context;
  if (rows.length === 0) return null;
  const settle =
    ({ line, label, unit }: TookRow) =>
    (text: string) => {
      const measure = {
        name: label,
        stored: unit,
        shown: shownUnit(unit, display),
        low: 0,
        high: 1_000_000,
        mayBeEmpty: true,
      };
      const read = said(readMeasure(text, measure, workshop));
      if (!read.ok) return state.api.refuse(read.fault);
      return state.api.doAct('writeTook', { job: job.id, line, value: read.value ?? null });
    };
  return (
    <section>
      <h2>{title}</h2>
      <div class={css['took']}>
        {rows.map((row) => (
          <SettledField
            key={row.line}
            label={row.label}
            unit={row.unit === 'each' ? '' : shownUnitWords(row.unit, display)}
            figure
            text={
              row.actual === undefined
                ? ''
                : plainText(inShown(row.actual.value, row.unit, display), workshop.decimalComma)
            }
            settle={settle(row)}
            hint={row.planned === undefined ? '' : `planned ${plannedWords(row, row.planned, display)}`}
          />
        ))}
      </div>
    </section>
  );
}

function plannedWords({ unit, range }: TookRow, planned: number, display: Display): string {
  const value = toBase(planned, unitOf(unit));
  if (typeof range === 'object') return readUnits(withRange({ value, range, unit, side: 'both' }, display), display);
  const figure = figureWords(value, unit, display);
  return range === undefined ? figure : `${figure}, range not known`;
}

function inShown(value: number, unit: string, display: Display): number {
  const shown = shownUnit(unit, display);
  return shown === unit ? value : cleanNoise(fromBase(toBase(value, unitOf(unit)), unitOf(shown)));
}

function plainText(figure: number, decimalComma: boolean): string {
  return decimalComma ? String(figure).replace('.', ',') : String(figure);
}

function TeachTheHouse({ state, context, job }: Pick<TakenParts, 'state' | 'context' | 'job'>) {
  const { records, today } = context;
  const reference = state.reference.value ?? sizesOf(records, job.id)[0]?.tank ?? [...records.tank.keys()][0] ?? '';
  const lessons = useMemo(
    () => houseLessons(context, { recipe: job.recipe, reference }),
    [records, today, job.recipe, reference],
  );
  const plants = useMemo(() => plantLesson(context), [records, today]);
  const tanks = [...records.tank.values()].map(({ id, label }) => ({ value: id, label: `${id} ${label}` }));
  return (
    <section>
      <h2>{actNames.teachHouse}</h2>
      <Hint>
        The median of the last five jobs is offered for each line of {job.recipe} that was measured. Nothing changes by
        itself.
      </Hint>
      <Fields look="short">
        <PickOne
          label="Effect shown on"
          value={reference}
          options={tanks}
          choose={(tank) => (state.reference.value = tank)}
        />
      </Fields>
      <Lessons lessons={lessons} plants={plants} api={state.api} context={context} recipe={job.recipe} />
    </section>
  );
}
