import type { CheckState } from '#shared-calc/bench/bench-types.ts';
import { stateOfAnswer } from '#shared-calc/bench/check-state.ts';
import type { UseName } from '#shared-calc/fields/uses.ts';
import { placedSize, type Spread } from '#shared-calc/jobs/placed-size.ts';
import { plantsReplacedDays } from '#shared-calc/jobs/plants-replaced.ts';
import { placeChecks, type PlaceCheck } from '#shared-calc/jobs/place-checks.ts';
import { frozenLines, type FrozenColumn, type QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { joinLines } from '#shared-calc/bench/column-lines.ts';
import { surveyLines } from '#shared-calc/jobs/survey-job.ts';
import { showWithUnit } from '#shared-calc/quantity/shown-unit.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import { lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import { frozenCalled, frozenFigure, frozenText, quoteSizes } from './quote-sizes.ts';

export interface QuoteFindings {
  /** Survey findings and assumptions. If sizes differ, each has its own value. */
  readonly assumed: readonly { readonly label: string; readonly value: string }[];
  /**
   * Checks and limits of the place that do not hold or are not known yet, then the general cautions; each with who
   * decides.
   */
  readonly cautions: readonly { readonly says: string; readonly decides: string; readonly sizes: readonly string[] }[];
  /** Days within which plants that die are replaced once; none if the workshop promises nothing. */
  readonly plantsReplacedDays: number | undefined;
}

/** What a printed quote says apart from its prices, from the frozen body. */
export function quoteFindings(body: QuoteBody): QuoteFindings {
  return {
    assumed: [...surveyLines(joinLines(listsIn(body))).flatMap((line) => assumedOf(line, body)), ...wayInOf(body)],
    cautions: [...cautionsOf(body)],
    plantsReplacedDays: promisedOf(body),
  };
}

/** The lists of lines that its sizes are worked from. */
function listsIn(body: QuoteBody): readonly (readonly Line[])[] {
  return [...new Set(body.columns.map((column) => frozenLines(body, column)))];
}

function assumedOf(line: Line, body: QuoteBody): QuoteFindings['assumed'] {
  const values = body.columns.flatMap((column) => {
    const own = frozenLines(body, column).find(({ name }) => name === line.name);
    const value = own && column.figures[own.name];
    if (!own || value === undefined) return [];
    const text = frozenText(value, own, body);
    return [{ called: frozenCalled(column), text: isSaid(line, column, body) ? text : `${text} (assumed)` }];
  });
  const texts = new Set(values.map(({ text }) => text));
  if (texts.size === 0) return [];
  const [only = ''] = texts;
  const value = texts.size === 1 ? only : values.map(({ called, text }) => `${called} ${text}`).join(', ');
  return [{ label: lineLabel(line), value }];
}

/** Asked at the place, or written for the size or the whole job. */
function isSaid({ name }: Line, { locals, given = [] }: QuoteBody['columns'][number], { whole }: QuoteBody): boolean {
  return (
    [...whole, ...locals].some(({ line }) => line === name) ||
    given.some(({ line, from }) => line === name && from === 'survey')
  );
}

function wayInOf({ job, workshop }: QuoteBody): QuoteFindings['assumed'] {
  const narrowestMm = job?.survey.narrowestMm ?? null;
  if (narrowestMm === null) return [];
  return [{ label: 'Way in, at its narrowest', value: showWithUnit(narrowestMm / 1000, 'mm', displayOf(workshop)) }];
}

/** Decides if nobody is named. */
const NOBODY_NAMED = 'Builder';

/** A house's own caution that names nobody is a note about its figures: it is shown with them, not on a client's paper. */
function* cautionsOf(body: QuoteBody): Generator<QuoteFindings['cautions'][number]> {
  const failing = body.columns.flatMap((column) =>
    limitsOf(column, body)
      .filter((check) => frozenState(check) !== 'holds')
      .map(({ says, decides }) => ({ says, decides, called: frozenCalled(column) })),
  );
  for (const [says, same] of Map.groupBy(failing, (check) => check.says)) {
    yield { says, decides: same[0]?.decides || NOBODY_NAMED, sizes: same.map(({ called }) => called) };
  }
  for (const { says, decides } of body.cautions ?? []) yield { says, decides, sizes: [] };
  const standing = listsIn(body)
    .flat()
    .filter(({ caution, decides }) => caution !== undefined && (decides ?? '') !== '');
  for (const [says = '', [line]] of Map.groupBy(standing, ({ caution }) => caution)) {
    yield { says, decides: line?.decides ?? NOBODY_NAMED, sizes: [] };
  }
}

type FrozenCheck = FrozenColumn['checks'][number];
type Limit = Pick<FrozenCheck, 'state' | 'says' | 'decides'> & { readonly holds?: boolean };

/** Quotes from before guesses had ranges say only whether a check holds. */
function frozenState({ state, holds }: Limit): CheckState {
  return state ?? stateOfAnswer(holds);
}

/** The checks of the recipe, then the limits of the place. */
function limitsOf(column: FrozenColumn, body: QuoteBody): readonly Limit[] {
  return [...column.checks, ...placeThen(column, body)];
}

/** The limits of the place for a size, as the quote was issued. */
export function placeThen(column: FrozenColumn, body: QuoteBody): readonly PlaceCheck[] {
  return column.place ?? placeBefore(column, body);
}

/** Of a quote from before places had a survey: only the way in was a figure. */
function placeBefore(column: FrozenColumn, body: QuoteBody): readonly PlaceCheck[] {
  const { job, workshop } = body;
  if (!job) return [];
  const lines = frozenLines(body, column);
  const figure = (use: UseName, unit: string) => frozenFigure(column, lineFor(lines, use), unit);
  const size = placedSize(column, {
    has: (use) => lineFor(lines, use) !== undefined,
    figure,
    worst: (use, unit) => spreadOf(figure(use, unit)),
  });
  return placeChecks({ ...job, sizes: [size], display: displayOf(workshop) }, column.key);
}

function spreadOf(figure: number | undefined): Spread | undefined {
  return figure === undefined ? undefined : { likely: figure, worst: figure };
}

/** What every quote promised before a workshop had days of its own. */
const once = { plantsBasicDays: 14, plantsFullDays: 30, plantsShowDays: 90 };

function promisedOf(body: QuoteBody): number | undefined {
  if (body.plantsReplacedDays !== undefined) return body.plantsReplacedDays ?? undefined;
  const kits = quoteSizes(body).map(({ kit }) => kit);
  // A size of another kit was left out of account then.
  return plantsReplacedDays(
    kits.filter((kit) => plantsReplacedDays([kit], once) !== undefined),
    once,
  );
}
