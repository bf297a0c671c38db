import { computed, signal, untracked, type ReadonlySignal, type Signal } from '@preact/signals';
import type { ActInputs } from '#shared-calc/acts/all-acts.ts';
import type { RuleHelp } from '#renderer/writing/rule-help.ts';
import { oldPricesIn } from '#shared-calc/buy/price-book.ts';
import type { SourceMark } from '#shared-calc/fields/source.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { Line, Recipe, Records, Tank } from '#shared-calc/records/records.ts';
import type { Box } from '#shared-calc/bench/bench-types.ts';
import type { BenchSource } from './bench-source.ts';
import type { BenchColumn } from '#shared-calc/jobs/worked-job.ts';
import type { BookStore } from './book-store.ts';
import type { EditHouse } from './house-ask.ts';
import type { Clock } from './clock.ts';
import { lineMarks, type LineMark } from '#shared-calc/recipe/family-marks.ts';
import { memo } from '#shared-calc/records/memo.ts';
import { lineFaces, type LineFace, type LineFaces } from './line-faces.ts';
import { ruleHelpOf } from './rule-help-of.ts';
import { workBench, type WorkedBench } from './worked-bench.ts';

/** `all`, or the lines with one mark; `none` for given figures without one. */
export type FromFilter = 'all' | SourceMark | 'none';

/** A house recipe, computed on a reference size. */
export interface RecipeStore {
  readonly recipe: ReadonlySignal<Recipe | undefined>;
  readonly lines: ReadonlySignal<readonly Line[]>;
  /** What it changes, adds and leaves out of its parent. */
  readonly marks: ReadonlySignal<readonly LineMark[]>;
  /** The tank its figures are computed for; `undefined` in a book without one. */
  readonly tank: ReadonlySignal<Tank | undefined>;
  readonly faces: ReadonlySignal<LineFaces>;
  /** Which source the list is filtered by. */
  readonly from: Signal<FromFilter>;
  /** Those lines of the list that the filter lets through. */
  readonly listed: ReadonlySignal<readonly LineFace[]>;
  /** The name of the line the side panel shows. */
  readonly chosen: Signal<string | undefined>;
  readonly open: (recipe: string | undefined) => void;
  readonly standOn: (tank: string) => void;
  /** A line's cell on the reference size. */
  readonly box: (line: string) => Box | undefined;
  /** Writes a line's figure or rule for the house; returns the reason if refused. */
  readonly write: (line: string, typed: string) => string | undefined;
  readonly helpFor: (line: string) => RuleHelp | undefined;
  readonly close: () => void;
}

export interface RecipeParts {
  readonly book: BookStore;
  readonly clock: Clock;
  readonly display: ReadonlySignal<Display>;
  /** Asks about an edit of the house first; left out, it is done at once. */
  readonly editHouse?: EditHouse | undefined;
}

export function openRecipeStore({ book, clock, display, editHouse }: RecipeParts): RecipeStore {
  const wanted = signal<string | undefined>(undefined);
  const reference = signal<string | undefined>(undefined);
  const chosen = signal<string | undefined>(undefined);
  const from = signal<FromFilter>('all');
  const facesMemo = memo<LineFaces>();
  const records = book.records;
  const recipe = computed(() => records.value.recipe.get(wanted.value ?? '') ?? firstOf(records.value.recipe));
  const lines = computed(() => book.derived.value.lines(recipe.value?.id ?? ''));
  const marks = computed(() => lineMarks(records.value, recipe.value?.id ?? ''));
  const tank = computed(() => records.value.tank.get(reference.value ?? '') ?? referenceTank(records.value));
  const faces = computed(() => facesMemo([lines.value, display.value], () => lineFaces(lines.value, display.value)));
  const listed = computed(() => faces.value.all.filter(({ line }) => isListed(line, from.value)));
  const bench = recipeBench(clock);
  const priced = memo<Priced>();
  const source = computed(() => {
    const { prices: on, rules } = book.derived.value;
    const prices = priced([on, rules], () => pricedBy({ prices: on, rules }));
    return sourceOf({ recipe: recipe.value, lines: lines.value, tank: tank.value, prices });
  });
  // Computed only while something reads it.
  const worked = computed(() => {
    const next = source.value;
    return next && untracked(() => bench.take(next));
  });
  return {
    recipe,
    lines,
    marks,
    tank,
    faces,
    from,
    listed,
    chosen,
    open: (id) => {
      if (id === undefined || id === wanted.peek()) return;
      wanted.value = id;
      chosen.value = undefined;
    },
    standOn: (id) => (reference.value = id),
    box: (name) => {
      const now = worked.value;
      void source.value;
      const key = tank.value?.id ?? '';
      return now?.isWorked(key) && faces.value.of(name) ? now.bench().box(key, name) : undefined;
    },
    write: (name, text) => written({ book, editHouse }, { line: faces.peek().of(name)?.line.id ?? name, text }),
    helpFor: (name) => helpOn(worked.peek(), faces.peek(), tank.peek()?.id, name),
    close: bench.close,
  };
}

function written(
  { book, editHouse }: Pick<RecipeParts, 'book' | 'editHouse'>,
  input: ActInputs['writeLine'],
): string | undefined {
  const write = () => book.doAct('writeLine', input);
  return editHouse ? editHouse({ act: 'writeLine', input }, write) : write();
}

function helpOn(
  worked: WorkedBench | undefined,
  faces: LineFaces,
  column: string | undefined,
  name: string,
): RuleHelp | undefined {
  const line = faces.of(name)?.line;
  return line && worked && ruleHelpOf({ bench: worked.bench(), column, line, faces });
}

/** Whether a line is shown: a rule without a mark claims no source, a figure without one lacks it. */
export function isListed({ role, source }: Line, from: FromFilter): boolean {
  if (from === 'none') return role === 'given' && source === undefined;
  return from === 'all' || source === from;
}

function recipeBench(clock: Clock) {
  let worked: WorkedBench | undefined;
  return {
    take: (source: BenchSource): WorkedBench => {
      const keys = source.columns.map((column) => column.key);
      if (worked) worked.take(source, keys);
      else worked = workBench(source, keys, clock);
      return worked;
    },
    close: () => worked?.close(),
  };
}

type Priced = Pick<BenchSource, 'pricing' | 'isOldPrice'>;

function pricedBy({ prices, rules }: Pick<Derived, 'prices' | 'rules'>): Priced {
  return { pricing: { prices, rules, basis: 'used', oneOffs: [] }, isOldPrice: oldPricesIn(prices) };
}

interface SourceParts {
  readonly recipe: Recipe | undefined;
  readonly lines: readonly Line[];
  readonly tank: Tank | undefined;
  readonly prices: Priced;
}

const nothing: BenchColumn['written'] = new Map();
const noTexts: ReadonlyMap<string, string> = new Map();

function sourceOf({ recipe, lines, tank, prices }: SourceParts): BenchSource | undefined {
  if (!recipe || !tank) return undefined;
  const column: BenchColumn = {
    size: tank.id,
    key: tank.id,
    tank,
    label: '',
    count: 1,
    locals: noTexts,
    written: nothing,
  };
  return {
    title: recipe.title,
    recipe,
    recipes: [recipe],
    lines,
    columns: [column],
    whole: nothing,
    job: noTexts,
    placeOn: () => () => [],
    ...prices,
  };
}

/** The demo's middle-sized tank, or the first measured tank there is. */
function referenceTank({ tank }: Pick<Records, 'tank'>): Tank | undefined {
  return tank.get('T07') ?? [...tank.values()].find((each) => each.insideLengthMm !== undefined) ?? firstOf(tank);
}

function firstOf<T>(table: ReadonlyMap<string, T>): T | undefined {
  const [first] = table.values();
  return first;
}
