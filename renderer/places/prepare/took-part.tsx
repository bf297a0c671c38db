import { useMemo } from 'preact/hooks';
import type { BookContext } from '#renderer/books/book-hands.ts';
import { ChoiceField, SettledField, Fields } from '#renderer/kit/field.tsx';
import { Hint } from '#renderer/kit/note.tsx';
import { figureWords, shownUnitWords } from '#shared-calc/quantity/figure-words.ts';
import { toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { sizesOf } from '#shared-calc/jobs/job-sheet.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { houseLessons, plantLesson } from './house-lessons.ts';
import { jobTook, plannedOfJob, type TookRow } from './job-took.ts';
import { Lessons } from './lessons.tsx';
import { OpenAJob } from './open-a-job.tsx';
import type { PrepareDesk } from './prepare-desk.ts';
import type { PartView } from './part-view.ts';
import { writeActual } from './write-actual.ts';

/** What a job took beside what was planned, and what the last five jobs could teach the house. */
export function TookPart({ desk, context, job }: PartView) {
  const { records, today } = context;
  const planned = useMemo(
    () => (job ? plannedOfJob(records, job, today) : new Map<string, number>()),
    [job, today, records.line, records.localValue, records.size, records.tank],
  );
  if (!job) return <OpenAJob context={context} part="took" />;
  const took = jobTook(records, job, planned);
  return (
    <>
      <div class="two-columns">
        <Taken title="Minutes by task" rows={took.minutes} desk={desk} context={context} job={job} />
        <div>
          <Taken title="What went in" rows={took.goods} desk={desk} context={context} job={job} />
          <Taken title="After the handover" rows={took.after} desk={desk} context={context} job={job} />
        </div>
      </div>
      <TeachTheHouse desk={desk} context={context} job={job} />
    </>
  );
}

interface TakenParts {
  readonly title: string;
  readonly rows: readonly TookRow[];
  readonly desk: PrepareDesk;
  readonly context: BookContext;
  readonly job: Job;
}

function Taken({ title, rows, desk, context, job }: TakenParts) {
  const { display, workshop, today } = context;
  if (rows.length === 0) return null;
  const settle = (row: TookRow) => (text: string) =>
    desk.hands.act(
      writeActual(desk.hands.records.peek(), row, {
        job: job.id,
        text,
        on: today,
        decimalComma: workshop.decimalComma,
      }),
    );
  return (
    <section>
      <h2>{title}</h2>
      <div class="took">
        {rows.map((row) => (
          <SettledField
            key={row.line}
            label={row.label}
            unit={row.unit === 'each' ? '' : shownUnitWords(row.unit, { ...display, unitsShown: {} })}
            figure
            text={row.actual === undefined ? '' : plainText(row.actual.value, workshop.decimalComma)}
            settle={settle(row)}
            hint={
              row.planned === undefined
                ? ''
                : `planned ${figureWords(toBase(row.planned, unitOf(row.unit)), row.unit, display)}`
            }
          />
        ))}
      </div>
    </section>
  );
}

function plainText(figure: number, decimalComma: boolean): string {
  return decimalComma ? String(figure).replace('.', ',') : String(figure);
}

function TeachTheHouse({ desk, context, job }: Pick<TakenParts, 'desk' | 'context' | 'job'>) {
  const { records, today } = context;
  const reference = desk.reference.value ?? sizesOf(records, job.id)[0]?.tank ?? [...records.tank.keys()][0] ?? '';
  const tables = [
    records.actual,
    records.line,
    records.job,
    records.size,
    records.localValue,
    records.tank,
    records.packPrice,
    records.workshop,
  ];
  const lessons = useMemo(
    () => houseLessons(records, { recipe: job.recipe, reference, on: today }),
    [...tables, job.recipe, reference, today],
  );
  const plants = useMemo(() => plantLesson(records, today), [...tables, today]);
  const tanks = [...records.tank.values()].map(({ id, label }) => ({ value: id, label: `${id} ${label}` }));
  return (
    <section>
      <h2>Teach the house</h2>
      <Hint>
        The median of the last five jobs is offered for each line of {job.recipe} that was measured. Nothing changes by
        itself.
      </Hint>
      <Fields look="short">
        <ChoiceField
          label="Effect shown on"
          value={reference}
          options={tanks}
          choose={(tank) => (desk.reference.value = tank)}
        />
      </Fields>
      <Lessons lessons={lessons} plants={plants} hands={desk.hands} context={context} recipe={job.recipe} />
    </section>
  );
}
