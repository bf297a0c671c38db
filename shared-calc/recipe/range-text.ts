import { tidyText, withoutPrimes } from '#shared-calc/quantity/read-figure.ts';
import type { Line } from '#shared-calc/records/records.ts';

/** A guess as texts: its likely figure and the two ends that the truth lies between about nineteen times in twenty. */
export interface RangeTexts {
  readonly likely: string;
  readonly least: string;
  readonly most: string;
}

const inBrackets = /^(?<likely>[^()]+?)\s*\(\s*(?<least>[^()]+?)\s+to\s+(?<most>[^()]+?)\s*\)$/;
const withDots = /^(?<least>[^()]+?)\s*\.\.\s*(?<most>[^()]+?)\s*,\s*likely\s+(?<likely>[^()]+)$/;

/**
 * Splits `12 % (8 to 18 %)` or `8..18 %, likely 12 %`; `undefined` for any other text. A figure without a unit gets
 * that of the last end, otherwise that of the likely figure, so `12 % (8 to 18)` is the same.
 */
export function splitRange(text: string): RangeTexts | undefined {
  const tidy = withoutPrimes(tidyText(text));
  const { likely, least, most } = (inBrackets.exec(tidy) ?? withDots.exec(tidy))?.groups ?? {};
  if (likely === undefined || least === undefined || most === undefined) return undefined;
  const unit = unitIn(most) ?? unitIn(likely) ?? '';
  const withUnit = (figure: string) => (unit === '' || unitIn(figure) !== undefined ? figure : `${figure} ${unit}`);
  return { likely: withUnit(likely), least: withUnit(least), most: withUnit(most) };
}

/** `12 % (8 to 18 %)`. The first end is written without its unit if all three have the same. */
export function joinRange({ likely, least, most }: RangeTexts): string {
  const unit = unitIn(most);
  const isSame = unit !== undefined && unitIn(likely) === unit && unitIn(least) === unit;
  return `${likely} (${isSame ? least.slice(0, -unit.length).trimEnd() : least} to ${most})`;
}

/** The house's text of a line: its figure with its range, otherwise its figure or rule as it stands. */
export function houseTextOf({ text, least, most, unit }: Pick<Line, 'text' | 'least' | 'most' | 'unit'>): string {
  if (least === undefined || most === undefined || text === '') return text;
  const behind = bareUnits.has(unit) ? '' : ` ${unit}`;
  return joinRange({ likely: text, least: `${least}${behind}`, most: `${most}${behind}` });
}

const bareUnits: ReadonlySet<string> = new Set(['number', 'each', 'share', 'money']);

/** The unit behind a figure; `undefined` if there is none. */
function unitIn(figure: string): string | undefined {
  return /\d\s*(?<unit>[A-Za-z%][^\s]*(?:\s[A-Za-z][^\s]*)*)$/.exec(figure)?.groups?.['unit'];
}
