import type { Box } from '#shared-calc/bench/bench-types.ts';
import { unsureWords } from '#shared-calc/bench/check-state.ts';
import { eachOnce, type SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import { surveyCautions } from '#shared-calc/jobs/survey-cautions.ts';
import { rangeWords, sideOf } from '#shared-calc/bench/range-words.ts';
import { showValue, shownUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { stateWords } from '#shared-calc/words/state-words.ts';
import { boxWarnings } from '#shared-calc/bench/box-warnings.ts';
import { benchCautions } from '#shared-calc/prepare/order-cautions.ts';
import { underFigures } from './cautions-answer.ts';
import { checkNotes, placeNotes } from './order-checks.ts';
import { atLeast, sayEachLack, sayPart, type QuotePart } from '#shared-calc/papers/quote-part.ts';
import { areHoursKnown, columnSums, partOf, type ColumnSums } from './column-sums.ts';
import { textTable } from './text-table.ts';
import { surveyOf, type WorkedOrder } from './work-order.ts';

/** The size bench as text: lines by section, sums, then missing figures and failed checks. */
export function benchTable(worked: WorkedOrder, lines: readonly Line[]): string {
  const { order } = worked;
  const heads = order.columns.map(({ key, count, recipe }) => {
    const built = recipe === undefined ? key : `${key}:${recipe}`;
    return count === 1 ? built : `${built} x${count}`;
  });
  const figures = heads.map((_, at) => at + 2);
  const sums = order.columns.map(({ key }) => columnSums(worked, key));
  const notes = [
    ...order.columns.flatMap(({ key }, at) => [...lackNotes(key, sums[at]), ...checkNotes(worked, key)]),
    ...placeNotes(worked),
  ];
  return [
    textTable(['', '', ...heads], lineRows(worked, lines), figures),
    '',
    textTable(['SUMS', '', ...heads], sumRows(sums, worked.workshop.currency), figures),
    ...(notes.length > 0 ? ['', ...notes] : []),
    ...mindedNotes(worked, lines),
  ].join('\n');
}

function sayKnown(sum: string | number | null, part: QuotePart): string {
  return sum === null ? 'not known yet' : atLeast(String(sum), part);
}

function lackNotes(key: string, sums: ColumnSums | undefined): readonly string[] {
  if (sums?.fault !== undefined) return [sums.fault];
  return sums?.sums ? sayEachLack(partOf(sums.sums)).map((says) => `${key}  ${says}`) : [];
}

/** The warnings of each size, then what to mind. */
function mindedNotes(worked: WorkedOrder, lines: readonly Line[]): readonly string[] {
  const { bench, order } = worked;
  const warnings = order.columns.flatMap(({ key }) =>
    lines.flatMap((line) =>
      boxWarnings(bench, bench.box(key, line.name)).map(({ says, decides }) => ({
        says: `${key} ${line.name}: ${says}`,
        decides,
      })),
    ),
  );
  return underFigures(warnings, orderCautions(worked, lines), displayOf(worked.workshop));
}

/** What the survey of the job found to mind, then what is beside these lines. */
export function orderCautions(worked: WorkedOrder, lines: readonly Line[]): readonly SaidCaution[] {
  const survey = surveyOf(worked);
  const beside = benchCautions(worked.bench, lines, displayOf(worked.workshop));
  return eachOnce([...(survey ? surveyCautions(survey) : []), ...beside]);
}

function lineRows({ bench, order, workshop }: WorkedOrder, lines: readonly Line[]): readonly (readonly string[])[] {
  const display = displayOf(workshop);
  const sections = Map.groupBy(lines, (line) => line.section);
  return [...sections].flatMap(([section, own]) => [
    [section.toUpperCase()],
    ...own.map((line) => [
      line.name,
      unitWords(line, display),
      ...order.columns.map(({ key }) => boxWords(bench.box(key, line.name), bench.lines(key), display)),
    ]),
  ]);
}

/** Choices, plain numbers and yes or no need no unit. */
function unitWords({ unit }: Line, display: Display): string {
  return ['choice', 'yes_no', 'number'].includes(unit) ? '' : shownUnit(unit, display);
}

function boxWords(box: Box, lines: readonly Line[], display: Display): string {
  const state = stateWords(box).join(', ');
  if (box.value === undefined) return state;
  const figure = figureOf(box, lines, display);
  return state === '' ? figure : `${state}: ${figure}`;
}

function figureOf(box: Box, lines: readonly Line[], display: Display): string {
  const { value = '', range, line } = box;
  const unsure = unsureWords(box);
  if (unsure !== undefined) return unsure;
  const figure = showValue(value, line.unit, display);
  if (range === undefined || typeof value !== 'number') return figure;
  if (range === 'not known') return `${figure}, range not known`;
  const { likely, beside } = rangeWords({ value, range, unit: line.unit, side: sideOf(lines, line.name) }, display);
  return `${likely}, ${beside}`;
}

const sumNames = [
  ['hours', 'hours'],
  ['cost', 'cost'],
  ['net', 'price before tax'],
  ['tax', 'tax'],
  ['gross', 'price'],
  ['deposit', 'deposit'],
] as const;

function sumRows(columns: readonly ColumnSums[], currency: string): readonly (readonly string[])[] {
  const rows = sumNames.map(([name, words]) => [
    words,
    name === 'hours' ? 'h' : currency,
    ...columns.map(({ sums }) => {
      if (!sums) return 'not known yet';
      return name === 'hours' && areHoursKnown(sums) ? String(sums.hours) : sayKnown(sums[name], partOf(sums));
    }),
  ]);
  const lacks = columns.map(({ sums }) => (sums ? sayPart(partOf(sums)) : ''));
  return lacks.every((says) => says === '') ? rows : [...rows, ['', '', ...lacks]];
}
