import type { EffectView, HouseView } from '#renderer/panel/panel-view.ts';
import type { BenchInput } from '#shared-calc/bench/bench-input.ts';
import type { Box } from '#shared-calc/bench/bench-types.ts';
import { onceBench } from '#shared-calc/bench/once-bench.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { orderSums, wholeSums } from '#shared-calc/bench/order-sums.ts';
import { showValue } from '#shared-calc/quantity/shown-unit.ts';
import type { BenchColumn } from '#shared-calc/jobs/worked-job.ts';
import { boxFigure } from '#shared-calc/quantity/figure-words.ts';
import { money } from './foot-boxes.ts';
import type { LineFace, LineFaces } from './line-faces.ts';
import type { WorkedBench } from './worked-bench.ts';

/** One size computed as if one of its cells followed the house. */
function followingHouse(worked: WorkedBench, column: BenchColumn, line: string): Bench {
  return onceBench(asHouse(worked.bench().input(), column, line));
}

/** The input without the local value; if there is none, without the value for the whole job. */
function asHouse(input: BenchInput, column: BenchColumn, line: string): BenchInput {
  const locals = new Map(column.locals);
  if (locals.delete(line)) return { ...input, columns: [{ ...column, locals }] };
  const job = new Map(input.job);
  job.delete(line);
  return { ...input, columns: [column], job };
}

/** Nobody reads more lines than this. */
const MOST_EFFECTS = 6;

export interface HouseParts {
  readonly worked: WorkedBench;
  readonly column: BenchColumn;
  readonly face: LineFace;
  readonly faces: LineFaces;
}

/** The part that needs a second bench. */
type WorkedPart = Omit<HouseView, 'asked'>;

/** The house value of an overridden cell, and what the override changes. */
function houseView(box: Box, parts: HouseParts): WorkedPart | undefined {
  if (box.source !== 'local' && box.source !== 'job') return undefined;
  const { worked, column, face, faces } = parts;
  const bench = followingHouse(worked, column, face.line.name);
  const there = bench.box(column.key, face.line.name);
  return {
    figure: there.value === undefined ? 'no figure' : boxFigure(there, face.line.unit, faces.display),
    unit: there.value === undefined ? '' : face.unit,
    ...mayDo(box, parts),
    caption: `What the ${box.source === 'job' ? 'value for the whole job' : `local ${box.rule ? 'rule' : 'value'}`} changes`,
    effects: [...lineEffects(bench, parts), ...priceEffect(bench, parts)],
  };
}

/** A missing figure can neither be sent to the house nor be held for the job, and an issued quote cannot change. */
function mayDo(box: Box, { worked, face }: HouseParts): Pick<HouseView, 'canGoBack' | 'canSend' | 'canHold'> {
  const canGoBack = worked.source().issued === undefined;
  const canSend = canGoBack && face.line.role !== 'tank' && box.text !== '';
  return { canGoBack, canSend, canHold: canSend && box.source === 'local' };
}

function lineEffects(bench: Bench, { worked, column, face, faces }: HouseParts): readonly EffectView[] {
  const effects: EffectView[] = [];
  const main = faces.all.filter(({ line }) => line.name !== face.line.name && isListed(line));
  for (const each of main) {
    const now = figureOf(worked.bench(), column.key, each, faces);
    const then = figureOf(bench, column.key, each, faces);
    if (now === then) continue;
    effects.push({ label: each.label, houseFigure: then, figure: now, unit: now === unknown ? '' : each.unit });
  }
  const mass = effects.find((effect) => effect.label === faces.for('filledMass')?.label);
  const first = effects.slice(0, MOST_EFFECTS - 1);
  return mass && !first.includes(mass) ? [...first.slice(0, -1), mass] : first;
}

/** Lines that count in needs and mass, and lines a builder looks at first. */
function isListed({ role, shownFirst }: LineFace['line']): boolean {
  return shownFirst && (role === 'need' || role === 'worked');
}

const unknown = 'not known yet';

function figureOf(bench: Bench, column: string, { line }: LineFace, { display }: LineFaces): string {
  const { value } = bench.box(column, line.name);
  return value === undefined ? unknown : showValue(value, line.unit, display);
}

function priceEffect(bench: Bench, { worked, column, faces }: HouseParts): readonly EffectView[] {
  const now = wholeSums(worked.sums(column.key));
  const then = orderSums(bench, [column.key], worked.source().pricing);
  if (!now.ok || !then.ok || now.value.quote.grossCoins === then.value.quote.grossCoins) return [];
  return [
    {
      label: 'Price',
      houseFigure: money(then.value.quote.grossCoins, faces.display),
      figure: money(now.value.quote.grossCoins, faces.display),
      unit: faces.display.currency,
    },
  ];
}

/** The house's part of the side panel, for an overridden cell. */
export function houseOf(box: Box, parts: HouseParts): HouseView | undefined {
  const part = houseView(box, parts);
  return part && { ...part, asked: askedOf(box, parts) };
}

function askedOf(
  { line: { name } }: Box,
  { worked, column }: Pick<HouseParts, 'worked' | 'column'>,
): HouseView['asked'] {
  const source = worked.source();
  const written = column.written.get(name) ?? source.whole.get(name);
  return { byClient: written?.by === 'client', closed: source.issued !== undefined };
}
