import { actNames } from '#shared-calc/words/act-names.ts';
import type { ComponentChildren } from 'preact';
import type { BookContext } from '#renderer/books/book-api.ts';
import { figureWords } from '#shared-calc/quantity/figure-words.ts';
import { Button } from '#renderer/kit/button.tsx';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Table } from '#renderer/kit/table.tsx';
import { paperCoins } from '#shared-calc/papers/paper-words.ts';
import { LAST_JOBS } from '#shared-calc/prepare/teach-house.ts';
import { toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { entryText } from '#shared-calc/recipe/typed-text.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { HouseLesson, PlantLesson } from '#shared-calc/derive/house-lessons.ts';
import type { JobApi } from '#renderer/store/job-api.ts';
import css from './prepare.module.css';
import { Muted } from '#renderer/kit/muted.tsx';
import { Unseen } from '#renderer/kit/unseen.tsx';

interface LessonsParts {
  readonly lessons: readonly HouseLesson[];
  readonly plants: PlantLesson | undefined;
  readonly api: JobApi;
  readonly context: BookContext;
  readonly recipe: string;
}

/** Old and new value, and the effect on the reference size; applied only by a click. */
export function Lessons({ lessons, plants, api, context, recipe }: LessonsParts) {
  if (lessons.length === 0 && !plants) return <EmptyNote>No job has been measured yet.</EmptyNote>;
  const rows = [
    ...lessons.map((lesson) => lineRow(lesson, { api, context, recipe })),
    ...(plants ? [plantRow(plants, { api, context })] : []),
  ];
  return (
    <Table
      scroll="Lessons"
      class={css['lessons']}
      rows={rows}
      keyOf={({ key }) => key}
      columns={[
        {
          head: 'Line',
          names: true,
          cell: ({ label, measured }) => (
            <>
              {label}
              {measured !== '' && <Muted> {measured}</Muted>}
            </>
          ),
        },
        { head: 'Jobs', figure: true, cell: ({ jobs }) => `${jobs} of ${LAST_JOBS}` },
        { head: 'House now', cell: ({ now }) => now },
        { head: 'House then', cell: ({ house, jobs }) => house ?? waiting(jobs) },
        { head: 'On the reference size', cell: ({ effect }) => effect },
        {
          head: <Unseen>act</Unseen>,
          cell: ({ house, teach }) => house !== undefined && <Button onClick={teach}>{actNames.teachHouse}</Button>,
        },
      ]}
    />
  );
}

interface LessonRow {
  readonly key: string;
  readonly label: string;
  readonly measured: string;
  readonly jobs: number;
  readonly now: ComponentChildren;
  /** The house value after the lesson; nothing while more jobs are needed. */
  readonly house: ComponentChildren;
  readonly effect: string;
  readonly teach: () => void;
}

function lineRow(
  lesson: HouseLesson,
  { api, context, recipe }: Pick<LessonsParts, 'api' | 'context' | 'recipe'>,
): LessonRow {
  const { line, label, jobs, old, proposed, as, median } = lesson;
  const { decimalComma } = context.workshop;
  return {
    key: line,
    label,
    measured: as === 'factor' ? `${writeNumber(median, 2, { decimalComma })} times what was planned` : '',
    jobs: jobs.length,
    now: <code>{entryText(old, context.display)}</code>,
    house: proposed === undefined ? undefined : <code>{entryText(proposed, context.display)}</code>,
    effect: effectWords(lesson, context),
    teach: () => {
      const input = { recipe, line };
      void api.editHouse({ act: 'teachHouse', input }, () => api.doAct('teachHouse', input));
    },
  };
}

function plantRow(
  { jobs, old, proposed, median }: PlantLesson,
  { api, context }: Pick<LessonsParts, 'api' | 'context'>,
): LessonRow {
  const share = (value: number) => `${writeNumber(value * 100, 1, { decimalComma: context.workshop.decimalComma })} %`;
  return {
    key: 'plants',
    label: 'Plants that fail',
    measured: `median ${share(median)}`,
    jobs: jobs.length,
    now: old === undefined ? 'not given yet' : share(old),
    house: proposed === undefined ? undefined : share(proposed),
    effect: 'of the cost of plants',
    teach: () => api.doAct('teachPlantLoss', {}),
  };
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
