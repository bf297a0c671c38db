import type { Warning } from '#shared-calc/cautions/warning.ts';
import { workRule } from '#shared-calc/bench/work-rule.ts';
import { ruleWorking } from '#shared-calc/papers/rule-working.ts';
import { readFigure } from '#shared-calc/quantity/read-figure.ts';
import { shownUnit, showValue, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { fromBase } from '#shared-calc/quantity/unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { storedText } from '#shared-calc/recipe/stored-text.ts';
import { entryText } from '#shared-calc/recipe/typed-text.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { Argument } from '#shared-calc/rule/signature.ts';
import type { TradeFunction } from '#shared-calc/trade/trade-function.ts';
import { calledByWords } from '#shared-calc/words/called-by-words.ts';
import { sayBoxFault, sayProblem } from '#shared-calc/words/say-box-cause.ts';
import { sayRuleFault } from '#shared-calc/words/say-rule-fault.ts';

/** The result of a function for the typed arguments. */
export interface Tried {
  /** The call as a rule would write it. */
  readonly rule: string;
  readonly answer?: { readonly figure: string; readonly unit: string };
  readonly working: readonly string[];
  /** What to check about the result. */
  readonly warnings: readonly Warning[];
  /** Faults by argument; a fault of no single argument is shown under the result. */
  readonly faults: readonly (string | undefined)[];
  readonly wrong?: string;
}

/** Evaluates a function from one text per argument; a bare number has the argument's own unit. */
export function tryFunction(entry: TradeFunction, texts: readonly string[], display: Display): Tried {
  const read = entry.args.map((argument, at) => partOf(argument, texts[at] ?? '', display));
  const parts = read.map((part) => (part.ok ? part.value : ''));
  const given = parts.slice(0, lastGiven(parts) + 1);
  const rule = `${entry.name}(${given.join(display.decimalComma ? '; ' : ', ')})`;
  if (read.some((part) => !part.ok)) {
    return { rule, working: [], warnings: [], faults: read.map((part) => (part.ok ? undefined : part.fault)) };
  }
  const empty = entry.args.findIndex((argument, at) => parts[at] === '' && argument.otherwise === undefined);
  if (empty >= 0) {
    const says = `${calledByWords().argument(entry.name, entry.args[empty]?.name ?? '')} needs a figure.`;
    return { rule, working: [], warnings: [], faults: faultAt(entry, empty, says) };
  }
  return answered(entry, { rule, given }, display);
}

interface Asked {
  readonly rule: string;
  /** The arguments in rule notation, up to the last one given. */
  readonly given: readonly string[];
}

function answered(entry: TradeFunction, { rule, given }: Asked, display: Display): Tried {
  const worked = workRule(rule);
  if (worked.ok) {
    const { value, unit, warnings } = worked.value;
    return {
      rule,
      answer: { figure: showValue(value, unit, display), unit: shownUnit(unit, display) },
      working: ruleWorking(worked.value, display),
      faults: [],
      warnings,
    };
  }
  const { fault } = worked;
  if (fault.kind === 'no answer') {
    const wrong = sayProblem({ ...fault.problem, line: '' });
    return { rule, working: [], warnings: [], faults: [], wrong };
  }
  const [first] = fault.kind === 'rule' ? fault.faults : [];
  const says = first ? sayRuleFault(first, rule, calledByWords()) : 'This cannot be worked.';
  const at = first ? argumentAt(entry.name, given, first.from) : undefined;
  return at === undefined
    ? { rule, working: [], warnings: [], faults: [], wrong: says }
    : { rule, working: [], warnings: [], faults: faultAt(entry, at, says) };
}

/** The arguments of the book's own example, as a person would type them. */
export function exampleTexts(entry: TradeFunction, display: Display): readonly string[] {
  const rule = entry.examples[0]?.rule ?? '';
  const inside = rule.startsWith(`${entry.name}(`) ? rule.slice(entry.name.length + 1, rule.lastIndexOf(')')) : '';
  return splitArguments(inside).map((text) => entryText(text.trim().replaceAll('"', ''), display));
}

/** Splits at commas that are outside brackets and quotes. */
function splitArguments(text: string): readonly string[] {
  const parts: string[] = [''];
  let depth = 0;
  let quoted = false;
  for (const mark of text) {
    if (mark === '"') quoted = !quoted;
    if (mark === '(') depth += 1;
    if (mark === ')') depth -= 1;
    if (mark === ',' && depth === 0 && !quoted) parts.push('');
    else parts.push((parts.pop() ?? '') + mark);
  }
  return parts;
}

/** An argument in rule notation: a figure with its unit and a decimal point, a choice in quotes, a rule unchanged. */
function partOf({ takes }: Argument, text: string, { decimalComma = false }: Display): Result<string, string> {
  const tidy = text.trim();
  if (tidy === '') return ok('');
  if (typeof takes !== 'string') return ok(`"${tidy.replaceAll('"', '')}"`);
  const line = { unit: bareUnit(takes) };
  const stored = storedText(tidy, line, decimalComma);
  if (!stored.ok) return failed(sayBoxFault(stored.fault, ''));
  const read = readFigure(stored.value, line);
  if (!read.ok) return stored;
  const { value, unit } = read.value;
  const figure = String(cleanNoise(fromBase(value, unit)));
  return ok(['number', 'share', 'each'].includes(unit.symbol) ? figure : `${figure} ${unit.symbol}`);
}

function bareUnit(takes: string): string {
  return takes === 'any' || takes === 'yes_no' ? 'number' : takes;
}

function lastGiven(parts: readonly string[]): number {
  return parts.findLastIndex((part) => part !== '');
}

/** The argument of the call at a position in the rule. */
function argumentAt(name: string, given: readonly string[], place: number): number | undefined {
  let from = name.length + 1;
  for (const [at, part] of given.entries()) {
    if (place >= from && place <= from + part.length) return at;
    from += part.length + 2;
  }
  return undefined;
}

function faultAt({ args }: TradeFunction, at: number, says: string): readonly (string | undefined)[] {
  return args.map((_, index) => (index === at ? says : undefined));
}
