import type { Box } from '#shared-calc/bench/bench-types.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { isUse, nounOf, type UseName } from '#shared-calc/fields/uses.ts';
import type { SizeAnimals } from '#shared-calc/recipe/column.ts';
import { toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { boxAsTyped } from '#shared-calc/quantity/figure-words.ts';
import { shownUnit, showWithUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { unitBehind } from '#shared-calc/quantity/write-figure.ts';
import { boxFor, inUnit } from '#shared-calc/bench/figure-for.ts';
import { sizeOfColumn } from '#shared-calc/bench/size-of-column.ts';
import { sideOf, withRange } from '#shared-calc/bench/range-words.ts';
import { isExpected, lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { givenWords } from './given-words.ts';

/** One size's figures for a card, by the uses of their lines; a recipe may lack some of them. */
export interface SizeFigures {
  readonly has: (use: UseName) => boolean;
  /** The recipe has no line for it, but should have one. */
  readonly lacks: (use: UseName) => boolean;
  /**
   * A figure with its unit: `16.84 L`, a given one to its own precision, `100 kg`, a guessed one with the end that
   * matters, `27.3 degC, up to 29.9 degC`; *needs a figure* if there is none yet.
   */
  readonly words: (use: UseName) => string;
  /** The same for a line without a use. */
  readonly wordsOf: (line: Pick<Line, 'name'>) => string;
  /** In the given unit; `undefined` if the recipe has no such line, or its cell no figure. */
  readonly number: (use: UseName, unit: string) => number | undefined;
  /** The least that it may be: the lower end of its range, or the figure itself. */
  readonly least: (use: UseName, unit: string) => number | undefined;
  /** Whether the thing of a line is present: yes, or more than zero. Not known yet counts as present. */
  readonly holds: (use: UseName) => boolean;
  /** The same, but not known yet counts as absent. */
  readonly surelyHolds: (use: UseName) => boolean;
  readonly needs: (line: Pick<Line, 'name'>) => boolean;
  /** Its inside size, in one sentence. */
  readonly size: () => string;
  /** What the size is for; empty where nobody has said. */
  readonly animals: SizeAnimals;
  /** From which temperature on somebody acts, by the kind of animal: `26 °C`. */
  readonly actFrom: string | undefined;
}

export function sizeFigures(bench: Bench, column: string, display: Display): SizeFigures {
  const lines = bench.lines(column);
  const { columns } = bench.input();
  const { animals = {} } = columns.find(({ key }) => key === column) ?? {};
  const box = (use: UseName) => boxFor(bench, column, use);
  const wordsOf = (of: Box) => {
    const { value, line, rule, range } = of;
    if (value === undefined) return 'needs a figure';
    const typed = boxAsTyped(of, line.unit, display);
    // Figures in a sentence stand beside others: all are in the units shown.
    if (typed && !typed.whole) return onPaper(`${typed.figure}${unitBehind(shownUnit(line.unit, display))}`);
    if (range === undefined || typeof value !== 'number')
      return onPaper((rule ? showWithUnit : givenWords)(value, line.unit, display));
    if (range === 'not known') return `${onPaper(showWithUnit(value, line.unit, display))} (range not known)`;
    return onPaper(withRange({ value, range, unit: line.unit, side: sideOf(lines, line.name) }, display));
  };
  return {
    has: (use) => lineFor(lines, use) !== undefined,
    lacks: (use) => lineFor(lines, use) === undefined && isExpected(lines, use),
    words: (use) => {
      const found = box(use);
      return found ? wordsOf(found) : notGiven(use);
    },
    wordsOf: ({ name }) => wordsOf(bench.box(column, name)),
    number: (use, unit) => inUnit(box(use)?.value, unit),
    least: (use, unit) => {
      const found = box(use);
      return inUnit(typeof found?.range === 'object' ? found.range.from : found?.value, unit);
    },
    holds: (use) => {
      const found = box(use);
      return found !== undefined && isThere(found.value);
    },
    surelyHolds: (use) => isThere(box(use)?.value ?? false),
    needs: ({ name }) => isThere(bench.box(column, name).value),
    size: () => sizeOfColumn(bench, column, display),
    animals,
    actFrom: actFromOf(animals, display),
  };
}

function actFromOf({ kind, count }: SizeAnimals, display: Display): string | undefined {
  if (kind?.actFrom === undefined || count === 0) return undefined;
  return givenWords(toBase(kind.actFrom, unitOf('degC')), 'degC', display);
}

/** Shown in place of the figure: "no quarantine is given in this recipe". */
export function notGiven(use: UseName): string {
  return `no ${nounOf(use)} is given in this recipe`;
}

function isThere(value: number | string | boolean | undefined): boolean {
  if (typeof value === 'number') return value > 1e-9;
  return value !== false;
}

/** The form on paper: a count alone, a daily figure without trailing zeros: `3`, `3 a day`, `12 h a day`. */
function onPaper(words: string): string {
  return words
    .replace(/\u00a0each$/, '')
    .replace(/(?:[.,]0+)?\u00a0each\/d$/, ' a day')
    .replace(/(?:[.,]0+)?\u00a0h\/d$/, '\u00a0h a day');
}

/**
 * A sentence with the figures of the uses in its braces filled in; nothing if the recipe may lack one of them and does.
 * A use that it should have is shown as not given; `{size}` is the inside size.
 */
export function fillWords(sentence: string, figures: SizeFigures): string | undefined {
  const named = [...sentence.matchAll(braces)].map(([, name = '']) => name).filter(isUse);
  if (!named.every((use) => figures.has(use) || figures.lacks(use))) return undefined;
  return sentence.replaceAll(braces, (_, name: string) => {
    if (name === 'size') return figures.size();
    return isUse(name) ? figures.words(name) : name;
  });
}

const braces = /\{(\w+)\}/g;
