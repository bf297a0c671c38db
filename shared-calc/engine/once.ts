import { unreachable } from '#shared-calc/result.ts';
import { ruleProgram, type RuleProgram, type Value } from '#shared-calc/rule/evaluate-rule.ts';
import type { FigureProblem } from '#shared-calc/rule/fault.ts';
import { namesIn, type Rule } from '#shared-calc/rule/tree.ts';
import type { BoxContent, BoxProblem, BoxValue, Figure } from './box-content.ts';
import { ruleFunctions } from './rule-functions.ts';

/**
 * Works out the lines of one size once: compiled rules in reading order. Same results as the graph engine, but nothing
 * is cached for a later edit. Lines of a cycle must be marked as such; an unmarked one counts as missing.
 */
export function workOnce(contents: ReadonlyMap<string, BoxContent>): ReadonlyMap<string, BoxValue> {
  const values = new Map<string, BoxValue>();
  const valueOf = (name: string): Value => {
    const read = values.get(name);
    return read?.known ? read.value : { kind: 'missing', line: name };
  };
  for (const [line, content] of inOrderOfReading(contents)) {
    values.set(line, valueOfBox(line, content, { valueOf, boxOf: (name) => values.get(name) }));
  }
  return values;
}

/** Some lines of a size with a few figures put elsewhere. */
export interface Again {
  readonly at: ReadonlyMap<string, Figure>;
  /** Those that are put elsewhere and those to be worked out, in order of reading. */
  readonly lines: readonly string[];
}

/**
 * Works out some lines of a size again, as often as asked: their values, in their order. Every other line that they
 * read keeps its value of `before`, which is asked for it once.
 */
export function workerAgain(
  contents: ReadonlyMap<string, BoxContent>,
  before: (line: string) => BoxValue,
): (again: Again) => readonly BoxValue[] {
  const now = new Map<string, BoxValue>();
  const boxOf = (name: string): BoxValue => {
    const known = now.get(name);
    if (known) return known;
    const asked = before(name);
    now.set(name, asked);
    return asked;
  };
  const valueOf = (name: string): Value => {
    const read = boxOf(name);
    return read.known ? read.value : { kind: 'missing', line: name };
  };
  const nothing: BoxContent = { is: 'nothing', why: 'missing' };
  return ({ at, lines }) => {
    const values = lines.map((line) => {
      const moved = at.get(line);
      const content = moved === undefined ? (contents.get(line) ?? nothing) : { is: 'figure' as const, value: moved };
      const value = valueOfBox(line, content, { valueOf, boxOf });
      now.set(line, value);
      return value;
    });
    for (const line of lines) now.set(line, before(line));
    return values;
  };
}

/** Works out one rule that reads no line. */
export function workAlone(rule: Rule): BoxValue {
  return valueOfBox(
    'result',
    { is: 'rule', rule },
    { valueOf: (line) => ({ kind: 'missing', line }), boxOf: () => undefined },
  );
}

interface Worked {
  readonly valueOf: (name: string) => Value;
  readonly boxOf: (name: string) => BoxValue | undefined;
}

function valueOfBox(line: string, content: BoxContent, { valueOf, boxOf }: Worked): BoxValue {
  if (content.is === 'figure') return { known: true, value: content.value };
  if (content.is === 'nothing') return { known: false, problem: { why: content.why, line } };
  const value = programOf(content.rule)(valueOf);
  return typeof value === 'object' ? { known: false, problem: problemOf(value, line, boxOf) } : { known: true, value };
}

/** The first cause: that of the line that was read, if it has no value itself. */
function problemOf(problem: FigureProblem, line: string, boxOf: Worked['boxOf']): BoxProblem {
  switch (problem.kind) {
    case 'missing': {
      const read = boxOf(problem.line);
      return read && !read.known ? read.problem : { why: 'missing', line: problem.line };
    }
    case 'refused':
      return { why: 'refused', line, says: problem.says };
    case 'divided-by-zero':
      return { why: 'divided by zero', line };
    case 'not-a-number':
      return { why: 'no number', line };
    default:
      return unreachable(problem);
  }
}

const programs = new WeakMap<Rule, RuleProgram>();

function programOf(rule: Rule): RuleProgram {
  const known = programs.get(rule) ?? ruleProgram(rule, ruleFunctions);
  programs.set(rule, known);
  return known;
}

interface Visit {
  readonly line: string;
  readonly content: BoxContent;
  readonly reads: readonly string[];
  next: number;
}

/** The names of all lines, each after the lines it reads. */
export function readingOrder(contents: ReadonlyMap<string, BoxContent>): readonly string[] {
  return [...inOrderOfReading(contents).keys()];
}

/** Every line after the lines it reads. Uses its own stack, not the call stack, so a chain may have any length. */
function inOrderOfReading(contents: ReadonlyMap<string, BoxContent>): ReadonlyMap<string, BoxContent> {
  const order = new Map<string, BoxContent>();
  const entered = new Set<string>();
  const visits: Visit[] = [];
  const enter = (line: string): void => {
    const content = contents.get(line);
    if (!content || entered.has(line)) return;
    entered.add(line);
    visits.push({ line, content, reads: content.is === 'rule' ? namesIn(content.rule) : [], next: 0 });
  };
  for (const name of contents.keys()) {
    enter(name);
    for (let visit = visits.at(-1); visit; visit = visits.at(-1)) {
      const read = visit.reads[visit.next];
      visit.next += 1;
      if (read !== undefined) enter(read);
      else visits.pop();
      if (read === undefined) order.set(visit.line, visit.content);
    }
  }
  return order;
}
