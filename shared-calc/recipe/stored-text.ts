import { readFigure } from '#shared-calc/quantity/read-figure.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { joinRange, splitRange, type RangeTexts } from './range-text.ts';
import type { BoxFault } from './read-box.ts';

/**
 * A figure written with the workshop's decimal comma as the book stores it: with a point, so that it means the same
 * under any setting. Each figure of a
 * range likewise. A rule, a word and unreadable text stay as typed; a text with two readings is refused.
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
  if (!decimalComma) return ok(text);
  const figure = readFigure(text, { unit: line.unit, decimalComma });
  if (figure.ok) return ok(pointed(text));
  return figure.fault.kind === 'two-readings' ? failed({ kind: 'two-readings', text: figure.fault.text }) : ok(text);
}

/** `1.288,5 mm` as `1288.5 mm`: removes thousands separators, then makes the comma a point; `12.5` stays. */
function pointed(text: string): string {
  return text.replace(/[\d.,]+/, (number) =>
    number.includes(',') || number.split('.').length > 2 ? number.replaceAll('.', '').replace(',', '.') : number,
  );
}
