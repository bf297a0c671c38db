import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { showWithUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { givenWords } from './given-words.ts';

/** How a card reads one size's figures; a recipe may have fewer lines than the card could tell. */
export interface SizeFigures {
  readonly has: (line: string) => boolean;
  /** A figure as it is read, with its unit: `16.84 L`, a given one as given, `100 kg`; *needs a figure* where there is none yet. */
  readonly words: (line: string) => string;
  /** In a unit; `undefined` where the recipe has no such line, or its box no figure. */
  readonly number: (line: string, unit: string) => number | undefined;
  /** Whether what a line asks about is there: yes, or more than nothing. What is not known yet counts as there. */
  readonly holds: (line: string) => boolean;
  /** The same, but what is not known yet counts as not there. */
  readonly surelyHolds: (line: string) => boolean;
}

export function sizeFigures(bench: Bench, column: string, display: Display): SizeFigures {
  const lines = new Set(bench.input().lines.map((line) => line.name));
  const has = (line: string) => lines.has(line);
  return {
    has,
    words: (line) => {
      const { value, line: of, rule } = bench.box(column, line);
      if (value === undefined) return 'needs a figure';
      return onPaper((rule ? showWithUnit : givenWords)(value, of.unit, display));
    },
    number: (line, unit) => {
      const value = has(line) ? bench.box(column, line).value : undefined;
      return typeof value === 'number' ? cleanNoise(fromBase(value, unitOf(unit))) : undefined;
    },
    holds: (line) => has(line) && isThere(bench.box(column, line).value),
    surelyHolds: (line) => has(line) && isThere(bench.box(column, line).value ?? false),
  };
}

function isThere(value: number | string | boolean | undefined): boolean {
  if (typeof value === 'number') return value > 1e-9;
  return value !== false;
}

/** As paper says it: a count alone, a daily one without its noughts: `3`, `3 a day`, `12 h a day`. */
function onPaper(words: string): string {
  return words
    .replace(/\u00a0each$/, '')
    .replace(/(?:[.,]0+)?\u00a0each\/d$/, ' a day')
    .replace(/(?:[.,]0+)?\u00a0h\/d$/, '\u00a0h a day');
}

/** A sentence with the figures of its braces put in; nothing where the recipe lacks one of its lines. */
export function fillWords(sentence: string, figures: SizeFigures): string | undefined {
  const named = [...sentence.matchAll(/\{(\w+)\}/g)].map(([, name = '']) => name);
  if (!named.every((name) => figures.has(name))) return undefined;
  return sentence.replaceAll(/\{(\w+)\}/g, (_, name: string) => figures.words(name));
}
