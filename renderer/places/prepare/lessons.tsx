import type { BookContext } from '#renderer/books/book-hands.ts';
import { figureWords } from '#shared-calc/quantity/figure-words.ts';
import { Button } from '#renderer/kit/button.tsx';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { paperCoins } from '#shared-calc/papers/paper-words.ts';
import { LAST_JOBS } from '#shared-calc/prepare/teach-house.ts';
import { toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { HouseLesson, PlantLesson } from '#shared-calc/derive/house-lessons.ts';
import type { PrepareHands } from '#renderer/store/prepare-hands.ts';

interface LessonsParts {
  readonly lessons: readonly HouseLesson[];
  readonly plants: PlantLesson | undefined;
  readonly hands: PrepareHands;
  readonly context: BookContext;
  readonly recipe: string;
}

/** Old, new, and what it does to the reference size; taken only by a click. */
export function Lessons({ lessons, plants, hands, context, recipe }: LessonsParts) {
  if (lessons.length === 0 && !plants) return <EmptyNote>No job has been measured yet.</EmptyNote>;
  return (
    <div class="scroll-x" tabIndex={0} role="region" aria-label="Lessons">
      <table class="told lessons">
        <thead>
          <tr>
            <th scope="col">Line</th>
            <th scope="col" class="n">
              Jobs
            </th>
            <th scope="col">House now</th>
            <th scope="col">House then</th>
            <th scope="col">On the reference size</th>
            <th scope="col">
              <span class="unseen">act</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {lessons.map((lesson) => (
            <LessonRow key={lesson.line} lesson={lesson} hands={hands} context={context} recipe={recipe} />
          ))}
          {plants && <PlantRow lesson={plants} hands={hands} context={context} />}
        </tbody>
      </table>
    </div>
  );
}

interface LessonParts {
  readonly lesson: HouseLesson;
  readonly hands: PrepareHands;
  readonly context: BookContext;
  readonly recipe: string;
}

function LessonRow({ lesson, hands, context, recipe }: LessonParts) {
  const { label, jobs, old, proposed, as, median } = lesson;
  const { decimalComma } = context.workshop;
  const measured = as === 'factor' ? `${writeNumber(median, 2, { decimalComma })} times what was planned` : '';
  return (
    <tr>
      <th scope="row">
        {label}
        {measured !== '' && <span class="aside"> {measured}</span>}
      </th>
      <td class="n">
        {jobs.length} of {LAST_JOBS}
      </td>
      <td>
        <code>{old}</code>
      </td>
      <td>{proposed === undefined ? waiting(jobs.length) : <code>{proposed}</code>}</td>
      <td>{effectWords(lesson, context)}</td>
      <td>
        {proposed !== undefined && (
          <Button onClick={() => hands.doAct('teachHouse', { recipe, line: lesson.line })}>Teach the house</Button>
        )}
      </td>
    </tr>
  );
}

function waiting(jobs: number): string {
  return jobs < LAST_JOBS ? `waits for ${LAST_JOBS - jobs} more` : 'as it is';
}

function effectWords({ effect, unit }: HouseLesson, { display, workshop }: BookContext): string {
  if (!effect) return '';
  const figure = (value: number | undefined) =>
    value === undefined ? 'no figure' : figureWords(toBase(value, unitOf(unit)), unit, display);
  const money = (coins: number) => `${coins > 0 ? '+' : ''}${paperCoins(coins, workshop)} ${workshop.currency}`;
  return `${figure(effect.before)} becomes ${figure(effect.after)}; cost ${money(effect.addsCostCoins)}, price ${money(effect.addsPriceCoins)}`;
}

interface PlantParts {
  readonly lesson: PlantLesson;
  readonly hands: PrepareHands;
  readonly context: BookContext;
}

function PlantRow({ lesson: { jobs, old, proposed, median }, hands, context }: PlantParts) {
  const share = (value: number) => `${writeNumber(value * 100, 1, { decimalComma: context.workshop.decimalComma })} %`;
  return (
    <tr>
      <th scope="row">
        Plants that fail <span class="aside">median {share(median)}</span>
      </th>
      <td class="n">
        {jobs.length} of {LAST_JOBS}
      </td>
      <td>{share(old)}</td>
      <td>{proposed === undefined ? waiting(jobs.length) : share(proposed)}</td>
      <td>of the cost of plants</td>
      <td>
        {proposed !== undefined && <Button onClick={() => hands.doAct('teachPlantLoss', {})}>Teach the house</Button>}
      </td>
    </tr>
  );
}
