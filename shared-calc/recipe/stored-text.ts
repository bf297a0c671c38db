import { readFigure } from '#shared-calc/quantity/read-figure.ts';
import { plainFigureText } from '#shared-calc/quantity/figure-reading.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { twoFigures } from '#shared-calc/rule/two-figures.ts';
import { joinRange, splitRange, type RangeTexts } from './range-text.ts';
import type { BoxFault } from './read-box.ts';

/**
 * A typed text as the book stores it: a figure, or each figure of a range, with a point and no marks of thousands, so
 * that it means the same under any setting. A rule, a word and unreadable text stay as typed. Refused: a number with
 * two readings or with the other decimal sign, and, with the decimal comma set, a rule in which `1,5` may be one figure
 * or two.
 */
export function storedText(text: string, line: Pick<Line, 'unit'>, decimalComma: boolean): Result<string, BoxFault> {
  if (line.unit === 'choice' || line.unit === 'yes_no') return ok(text);
  const range = splitRange(text);
  return range ? storedRange(range, line, decimalComma) : storedFigure(text, line, decimalComma);
}

function storedRange(range: RangeTexts, line: Pick<Line, 'unit'>, decimalComma: boolean): Result<string, BoxFault> {
  const likely = storedFigure(range.likely, line, decimalComma);
  const least = storedFigure(range.least, line, decimalComma);
  const most = storedFigure(range.most, line, decimalComma);
  if (!likely.ok) return likely;
  if (!least.ok) return least;
  return most.ok ? ok(joinRange({ likely: likely.value, least: least.value, most: most.value })) : most;
}

function storedFigure(text: string, line: Pick<Line, 'unit'>, decimalComma: boolean): Result<string, BoxFault> {
  const figure = readFigure(text, { unit: line.unit, decimalComma });
  if (figure.ok) return ok(plainFigureText(text, figure.value.written, decimalComma));
  const { fault } = figure;
  if (fault.kind === 'two-readings' || fault.kind === 'other-sign') return failed(fault);
  const unclear = decimalComma ? twoFigures(text) : undefined;
  return unclear ? failed({ kind: 'rule', text, faults: [unclear] }) : ok(text);
}
