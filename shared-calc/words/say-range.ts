import type { Line } from '#shared-calc/records/records.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { Probe } from '#shared-calc/bench/probes.ts';
import { linesUnder, rangeWords, sideOf } from '#shared-calc/bench/range-words.ts';
import type { Figure } from '#shared-calc/engine/box-content.ts';
import { figureWords, shownUnitWords } from '#shared-calc/quantity/figure-words.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { inSentence, lineLabel } from '#shared-calc/recipe/line-label.ts';
import { listAnd } from '#shared-calc/rule/list-words.ts';

/** How a figure and its range are explained, and what to measure to narrow it. */
export interface RangeSaid {
  /** `27.3 °C (25.6 to 29.9).` */
  readonly range: string;
  /** `29.9 where warming factor is 1.6: no reading has set it.`, for the ends that matter. */
  readonly ends: readonly string[];
  /** What the range does not cover. */
  readonly limits: string;
}

const notKnown: RangeSaid = {
  range: 'Range not known: it has no answer at one end of a guess.',
  ends: [],
  limits: '',
};

/** The ranges behind a cell: its own, or those of the figures that a check compares. */
export function sayRanges(bench: Bench, column: string, line: string, display: Display): readonly RangeSaid[] {
  const lines = bench.lines(column);
  const compared = lines.filter(({ name }) => linesUnder(lines, line).includes(name));
  const under = compared.flatMap((each) => {
    const said = sayRange(bench, column, each.name, display);
    return said ? [{ ...said, range: `${lineLabel(each)}: ${said.range}` }] : [];
  });
  const own = sayRange(bench, column, line, display);
  return own ? [own] : under;
}

/** The range of a cell in sentences; `undefined` if no guess moves it. */
export function sayRange(bench: Bench, column: string, line: string, display: Display): RangeSaid | undefined {
  const { value, range, line: of, rule } = bench.box(column, line);
  if (range === undefined || typeof value !== 'number') return undefined;
  if (range === 'not known') return notKnown;
  const side = sideOf(bench.lines(column), line);
  const words = rangeWords({ value, range, unit: of.unit, side }, display);
  const unit = shownUnitWords(of.unit, display);
  const said = `${words.likely}${unit === '' ? '' : `\u00a0${unit}`} (${words.from} to ${words.to}).`;
  if (!rule) return { range: said, ends: ['A guess until it is measured.'], limits: '' };
  const { probes } = bench.ranges(column);
  const endOf = (figure: string, by: string | null): readonly string[] => {
    const probe = probes.find(({ name }) => name === by);
    return probe ? [`${figure} where ${probeSaid(probe, bench.lines(column), display)}.`] : [];
  };
  const from = side === 'to' ? [] : endOf(words.from, range.fromBy);
  const to = side === 'from' ? [] : endOf(words.to, range.toBy);
  return { range: said, ends: [...from, ...to], limits: limitsOf(probes) };
}

function probeSaid({ name, at, together }: Probe, lines: readonly Line[], display: Display): string {
  const guesses = lines.filter((line) => at.has(line.name));
  const figure = (value: Figure | undefined, unit: string) =>
    value === undefined ? '' : figureWords(value, unit, display);
  const said = guesses.map((line) => `${inSentence(lineLabel(line))} is ${figure(at.get(line.name), line.unit)}`);
  return together ? `${listAnd(said)} (${name}): no reading has set them` : `${said.join('')}: no reading has set it`;
}

function limitsOf(probes: readonly Probe[]): string {
  const cases = probes.filter(({ together }) => together).map(({ name }) => name);
  const others = cases.length === 0 ? '' : `, and several together part of the way (${cases.join(', ')})`;
  return `Range: each guess alone at its worst${others}. All at once could be worse.`;
}
