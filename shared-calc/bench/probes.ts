import type { BoxContent, BoxValue, Figure } from '#shared-calc/engine/box-content.ts';
import { readingOrder, workerAgain, type Again } from '#shared-calc/engine/once.ts';
import type { Ends } from '#shared-calc/recipe/read-box.ts';
import { sameList } from '#shared-calc/records/memo.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { namesIn, type Rule } from '#shared-calc/rule/tree.ts';

/** A size worked once more with one guess, or the guesses of one case, put toward an end. */
export interface Probe extends Again, Moved {
  /** Worked at each call: the values of its lines, in their order. */
  readonly values: () => readonly BoxValue[];
}

interface Moved {
  /** `warm_factor most`, or the name of the case. */
  readonly name: string;
  /** The guesses that are moved, in coherent base units. */
  readonly at: ReadonlyMap<string, Figure>;
  /** Part of the way of several guesses, or the whole way of one. */
  readonly together: boolean;
}

/** A given figure that is a guess, with its likely value. */
interface Guess extends Ends {
  readonly line: Line;
  readonly likely: number;
}

/**
 * How far each guess of a case goes from its likely figure to its end: 1/sqrt(2), so that two equal departures together
 * come out as the root of their squares.
 */
const PART_OF_THE_WAY = 0.7;

/** One size as probes read it. */
export interface ProbedColumn {
  readonly lines: readonly Line[];
  /** The cells of the size; a cell that cannot be worked out has no content. */
  readonly contents: ReadonlyMap<string, BoxContent & { readonly range?: Ends }>;
  /** The value of a cell at the likely figures. */
  readonly before: (line: string) => BoxValue;
}

/**
 * A size with each guess at each of its ends, and once for each case of two guesses or more. Only lines that read a
 * guess are worked; needs, work and money keep their likely figures.
 */
export function probesOf(column: ProbedColumn): readonly Probe[] {
  const { guesses, rules } = guessesAndRules(column);
  if (guesses.length === 0) return [];
  const linesOf = reachOf(column, { guesses, rules });
  const work = workerAgain(column.contents, column.before);
  return [...guesses.flatMap(probesAlone), ...casesOf(guesses)].map((moved) => {
    const again = { ...moved, lines: linesOf(moved.at) };
    return { ...again, values: () => work(again) };
  });
}

interface GuessesAndRules {
  readonly guesses: readonly Guess[];
  /** Of each line. */
  readonly rules: readonly (Rule | undefined)[];
}

function guessesAndRules({ lines, contents }: ProbedColumn): GuessesAndRules {
  const guesses: Guess[] = [];
  const rules = lines.map((line) => {
    const content = contents.get(line.name);
    if (content?.is === 'rule') return content.rule;
    if (content?.is === 'figure' && content.range && typeof content.value === 'number') {
      guesses.push({ line, likely: content.value, ...content.range });
    }
    return undefined;
  });
  return { guesses, rules };
}

function probesAlone({ line: { name }, least, most }: Guess): readonly Moved[] {
  return [
    { name: `${name} least`, at: new Map([[name, least]]), together: false },
    { name: `${name} most`, at: new Map([[name, most]]), together: false },
  ];
}

function casesOf(guesses: readonly Guess[]): readonly Moved[] {
  const names = [...new Set(guesses.flatMap(({ line }) => Object.keys(line.cases ?? {})))];
  return names.flatMap((name) => {
    const at = new Map<string, Figure>();
    for (const { line, likely, ...ends } of guesses) {
      const end = line.cases?.[name];
      if (end !== undefined) at.set(line.name, likely + PART_OF_THE_WAY * (ends[end] - likely));
    }
    return at.size < 2 ? [] : [{ name, at, together: true }];
  });
}

/** The guesses that are moved, and the lines that read them, directly or through others, in order of reading. */
type Reach = (moved: ReadonlyMap<string, unknown>) => readonly string[];

/** The last reach of each recipe: sizes mostly have the same rules and the same guesses. */
const reaches = new WeakMap<readonly Line[], { readonly on: readonly unknown[]; readonly reach: Reach }>();

function reachOf({ lines, contents }: ProbedColumn, { guesses, rules }: GuessesAndRules): Reach {
  const names = guesses.map(({ line }) => line.name);
  const on = [...names, ...rules];
  const known = reaches.get(lines);
  if (known && sameList(on, known.on) === known.on) return known.reach;
  const reach = openReach(findReached({ lines, contents }, names));
  reaches.set(lines, { on, reach });
  return reach;
}

interface Reached {
  readonly line: string;
  /** The guesses it is or reads, directly or through others. */
  readonly guesses: readonly string[];
}

function openReach(reached: readonly Reached[]): Reach {
  const known = new Map<string, readonly string[]>();
  return (moved) => {
    const key = [...moved.keys()].join('\n');
    const lines =
      known.get(key) ??
      reached.filter(({ guesses }) => guesses.some((guess) => moved.has(guess))).map(({ line }) => line);
    known.set(key, lines);
    return lines;
  };
}

function findReached(
  { lines, contents }: Pick<ProbedColumn, 'lines' | 'contents'>,
  guesses: readonly string[],
): readonly Reached[] {
  const fixed = new Set(lines.filter(isFixed).map(({ name }) => name));
  const read = new Map<string, readonly string[]>(guesses.map((name) => [name, [name]]));
  for (const line of readingOrder(contents)) {
    const content = contents.get(line);
    if (content?.is !== 'rule' || fixed.has(line)) continue;
    const through = [...new Set(namesIn(content.rule).flatMap((name) => read.get(name) ?? []))];
    if (through.length > 0) read.set(line, through);
  }
  return [...read].map(([line, through]) => ({ line, guesses: through }));
}

/** What is bought, done and paid is worked at the likely figures alone. */
export function isFixed({ role, unit }: Line): boolean {
  return role === 'need' || role === 'work' || unit.startsWith('money');
}
