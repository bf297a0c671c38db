import { readFigure } from '#shared-calc/quantity/read-figure.ts';
import type { NumberFault } from '#shared-calc/quantity/read-number.ts';
import { figureKindOfUnit, type Kind } from '#shared-calc/quantity/kind.ts';
import { sameDimension } from '#shared-calc/quantity/dimension.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { checkRule } from '#shared-calc/rule/check-rule.ts';
import type { RuleFault } from '#shared-calc/rule/fault.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';
import { readRule } from '#shared-calc/rule/read-rule.ts';
import type { Rule } from '#shared-calc/rule/tree.ts';
import { splitRange, type RangeTexts } from './range-text.ts';
import { kindOfLine, type Scope } from './scope.ts';

/** A parsed cell: a figure, a rule, nothing yet, or text that is neither. */
export type BoxReading =
  | { readonly is: 'figure'; readonly value: number | string | boolean; readonly range?: Ends }
  | { readonly is: 'rule'; readonly rule: Rule }
  | { readonly is: 'missing' }
  | { readonly is: 'faulty'; readonly fault: BoxFault };

/** The ends of a guessed figure, in coherent base units. */
export interface Ends {
  readonly least: number;
  readonly most: number;
}

export type BoxFault =
  | { readonly kind: 'rule'; readonly text: string; readonly faults: readonly RuleFault[] }
  | {
      readonly kind: 'not-an-option';
      readonly text: string;
      readonly options: readonly string[];
      readonly near?: string;
    }
  | Exclude<NumberFault, { readonly kind: 'not-a-figure' }>
  /** The figures of a range, as they are written. */
  | ({ readonly kind: 'range-order' } & RangeTexts)
  | { readonly kind: 'range-of-rule'; readonly text: string };

/**
 * Parses a cell's text for its line: first as a figure (a bare number gets the line's unit, a bare word is a choice),
 * with its range if it has one (`12 % (8 to 18 %)`), only then as a rule, whose kind must be the line's own.
 */
export function readBox(text: string, line: Line, scope: Scope): BoxReading {
  const tidy = text.trim();
  if (tidy === '') return { is: 'missing' };
  const plain = line.unit === 'choice' ? readChoice(tidy, line, scope) : readPlain(tidy, line);
  return plain ?? readAsRule(tidy, line, scope);
}

function readPlain(text: string, line: Line): BoxReading | undefined {
  if (line.unit === 'yes_no') {
    const word = text.toLowerCase();
    if (['yes', 'true'].includes(word)) return { is: 'figure', value: true };
    return ['no', 'false'].includes(word) ? { is: 'figure', value: false } : undefined;
  }
  const range = splitRange(text);
  return range ? readRange(range, text, line) : readOne(text, line);
}

/** A guess: three figures in order. Only a figure has a range; a rule in its place is refused. */
function readRange(range: RangeTexts, text: string, line: Line): BoxReading {
  const [likely, least, most] = [readPart(range.likely), readPart(range.least), readPart(range.most)];
  if (typeof likely !== 'number') return likely;
  if (typeof least !== 'number') return least;
  if (typeof most !== 'number') return most;
  if (least > likely || likely > most) return { is: 'faulty', fault: { kind: 'range-order', ...range } };
  return { is: 'figure', value: likely, range: { least, most } };

  function readPart(part: string): number | BoxReading {
    const reading = readOne(part, line);
    if (reading?.is === 'figure') return Number(reading.value);
    return reading ?? { is: 'faulty', fault: { kind: 'range-of-rule', text } };
  }
}

function readOne(text: string, line: Line): BoxReading | undefined {
  const figure = readFigure(text, { unit: line.unit });
  if (figure.ok) return figureOrWrongKind(figure.value, text, line);
  const { fault } = figure;
  return fault.kind === 'two-readings' || fault.kind === 'other-sign' ? { is: 'faulty', fault } : undefined;
}

function figureOrWrongKind(
  read: { readonly value: number; readonly unit: Parameters<typeof figureKindOfUnit>[0] },
  text: string,
  line: Line,
): BoxReading {
  const given = figureKindOfUnit(read.unit);
  const wanted = kindOfLine(line);
  if (fits(given, wanted)) return { is: 'figure', value: read.value };
  const fault: RuleFault = { kind: 'wrong-kind-for-line', wanted, unit: line.unit, given, from: 0, to: text.length };
  return { is: 'faulty', fault: { kind: 'rule', text, faults: [fault] } };
}

function readChoice(text: string, line: Line, scope: Scope): BoxReading | undefined {
  const word = /^"(.*)"$/.exec(text)?.[1] ?? text;
  const options = line.options;
  if (options?.includes(word)) return { is: 'figure', value: word };
  if (!/^[\p{L}\d][\p{L}\d _-]*$/u.test(word) || (word === text && scope.lineNames.includes(word))) return undefined;
  if (!options) return { is: 'figure', value: word };
  const near = nearestName(word, options);
  return { is: 'faulty', fault: { kind: 'not-an-option', text: word, options, ...(near !== undefined && { near }) } };
}

function readAsRule(text: string, line: Line, scope: Scope): BoxReading {
  const faulty = (faults: readonly RuleFault[]): BoxReading => ({
    is: 'faulty',
    fault: { kind: 'rule', text, faults },
  });
  const read = readRule(text);
  if (!read.ok) return faulty([read.fault]);
  const checked = checkRule(read.value, scope);
  if (checked.faults.length > 0) return faulty(checked.faults);
  const wanted = kindOfLine(line);
  if (!checked.kind || fits(checked.kind, wanted)) return { is: 'rule', rule: read.value };
  return faulty([
    { kind: 'wrong-kind-for-line', wanted, unit: line.unit, given: checked.kind, from: 0, to: text.length },
  ]);
}

/** Whether a figure of one kind is allowed where another is wanted: plain figures mix, a reading and a step do not. */
function fits(given: Kind, wanted: Kind): boolean {
  if (given.is !== 'figure' || wanted.is !== 'figure') return given.is === wanted.is;
  return sameDimension(given.dimension, wanted.dimension) && (given.sort === 'reading') === (wanted.sort === 'reading');
}
