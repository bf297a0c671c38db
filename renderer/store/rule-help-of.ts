import { readerFor } from '#shared-calc/bench/box-reader.ts';
import type { Completion, RuleCheck, RuleHelp, RuleHint, RuleMark } from '#renderer/writing/rule-help.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { BoxReading } from '#shared-calc/recipe/read-box.ts';
import { readBox } from '#shared-calc/recipe/read-box.ts';
import type { Scope } from '#shared-calc/recipe/scope.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { completeRule } from '#shared-calc/rule/complete-rule.ts';
import type { Completion as CoreCompletion } from '#shared-calc/rule/completion.ts';
import { generalFunctions } from '#shared-calc/rule/general.ts';
import { findOpenCall } from '#shared-calc/rule/open-call.ts';
import { readTokens, type Token } from '#shared-calc/rule/read-tokens.ts';
import { functionInRules } from '#shared-calc/trade/all-functions.ts';
import { calledByWords } from '#shared-calc/words/called-by-words.ts';
import { sayBoxFault } from '#shared-calc/words/say-box-cause.ts';
import { sayRuleFault } from '#shared-calc/words/say-rule-fault.ts';
import { writtenText } from '#shared-calc/recipe/typed-text.ts';
import { figureWords } from '#shared-calc/quantity/figure-words.ts';
import type { LineFaces } from './line-faces.ts';

export interface HelpParts {
  readonly bench: Bench;
  /** The column whose current figures are shown next to names; none on a bench without sizes. */
  readonly column: string | undefined;
  readonly line: Line;
  readonly faces: LineFaces;
}

/** The list is never longer: typing one more letter finds the rest. */
const MOST_OFFERS = 40;

/** Completion for the text of one cell, from the lines and functions its rule may use. */
export function ruleHelpOf(parts: HelpParts): RuleHelp {
  return {
    check: (text) => checkText(text, parts),
    complete: (text, cursor) => completions(text, cursor, parts),
    hint: (text, cursor) => hintAt(text, cursor, parts),
  };
}

function scopeIn(bench: Bench, column: string | undefined): Scope {
  return column === undefined ? readerFor(bench.input().lines).scope : bench.scope(column);
}

function checkText(text: string, { bench, column, line, faces }: HelpParts): RuleCheck {
  const scope = scopeIn(bench, column);
  const marks = marksIn(text, scope);
  const written = writtenText(text, line, faces.display);
  const reading: BoxReading = written.ok ? readBox(written.value, line, scope) : { is: 'faulty', fault: written.fault };
  return { marks: written.ok ? marks : [], faults: faultsOf(reading, text, line.name, faces) };
}

function faultsOf(reading: BoxReading, text: string, line: string, faces: LineFaces): RuleCheck['faults'] {
  if (reading.is !== 'faulty') return [];
  const { fault } = reading;
  const called = calledByWords(faces);
  if (fault.kind !== 'rule') return [wholeFault(text, sayBoxFault(fault, line, called))];
  const start = text.length - text.trimStart().length;
  return fault.faults.map((each) => ({
    from: each.from + start,
    to: each.to + start,
    says: sayRuleFault(each, fault.text, called),
  }));
}

function wholeFault(text: string, says: string): RuleCheck['faults'][number] {
  return { from: 0, to: text.length, says };
}

function marksIn(text: string, scope: Scope): readonly RuleMark[] {
  const tokens = readTokens(text);
  return tokens.flatMap((token, at): readonly RuleMark[] => {
    const { from, to } = token;
    if (token.is === 'text') return [{ from, to, kind: 'choice' }];
    if (token.is !== 'word') return [];
    const isCall = tokens[at + 1]?.is === 'open';
    if (isCall) return isFunction(token.word, scope) ? [{ from, to, kind: 'function' }] : [];
    return scope.lineNames.includes(token.word) ? [{ from, to, kind: 'name' }] : [];
  });
}

function isFunction(name: string, scope: Scope): boolean {
  return scope.functions.has(name) || generalFunctions.has(name);
}

function completions(text: string, cursor: number, parts: HelpParts): readonly Completion[] {
  const { bench, column, line } = parts;
  const words = wordsOf(line);
  const bare = /^\s*[\p{L}\d_ -]*$/u.test(text);
  if (words.length > 0 && bare) {
    const typed = text.trim().toLowerCase();
    const fitting = words.filter((word) => word.toLowerCase().startsWith(typed) && word !== text);
    if (fitting.length > 0 || typed === '') return fitting.map((word) => choiceOffer(word, text));
  }
  if (text.trim() === '') return [];
  const { from, to, options } = completeRule(text, cursor, scopeIn(bench, column));
  return options.slice(0, MOST_OFFERS).map((option) => ({ from, to, ...offerOf(option, parts) }));
}

function wordsOf({ unit, options = [] }: Line): readonly string[] {
  return unit === 'yes_no' ? ['yes', 'no'] : unit === 'choice' ? options : [];
}

function choiceOffer(word: string, text: string): Completion {
  return { from: 0, to: text.length, insert: word, kind: 'choice', label: '', figure: '' };
}

function offerOf(option: CoreCompletion, parts: HelpParts): Omit<Completion, 'from' | 'to'> {
  const { text: insert, label } = option;
  switch (option.is) {
    case 'line':
      return { insert, kind: 'name', label: parts.faces.of(label)?.label ?? label, figure: figureOf(label, parts) };
    case 'function':
      return { insert, kind: 'function', label: functionWords(label, parts)?.written ?? label, figure: '' };
    case 'unit':
      return { insert, kind: 'unit', label: '', figure: '' };
    case 'word':
    case 'answer':
      return { insert, kind: 'choice', label: '', figure: '' };
  }
}

function figureOf(name: string, { bench, column, faces }: HelpParts): string {
  const face = faces.of(name);
  const value = column === undefined ? undefined : bench.box(column, name).value;
  return face && value !== undefined ? figureWords(value, face.line.unit, faces.display) : '';
}

function hintAt(text: string, cursor: number, parts: HelpParts): RuleHint | undefined {
  const before: readonly Token[] = readTokens(text.slice(0, cursor)).slice(0, -1);
  const call = findOpenCall(before);
  return call && functionWords(call.fn, parts);
}

/** How to write a function, and what it does. */
function functionWords(name: string, { faces: { display } }: HelpParts): RuleHint | undefined {
  const said = generalFunctions.get(name) ?? tradeWords(name);
  if (!said) return undefined;
  return { written: display.decimalComma ? said.shows.replaceAll(',', ';') : said.shows, says: said.says };
}

function tradeWords(name: string): { readonly shows: string; readonly says: string } | undefined {
  const trade = functionInRules(name);
  return trade && { shows: `${name}(${trade.args.map((argument) => argument.name).join(', ')})`, says: trade.help };
}
