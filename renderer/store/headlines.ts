import type { BoxView } from '#renderer/bench/view-model.ts';
import type { UseName } from '#shared-calc/fields/uses.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { showValue } from '#shared-calc/quantity/shown-unit.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { rangedFigure } from './box-view.ts';
import { rangeBeside } from './box-words.ts';
import type { LineFaces } from './line-faces.ts';

/** The use of the line that gives a section's main figure, and the name it has there. */
const headlineOf: ReadonlyMap<UseName | undefined, string> = new Map<UseName, string>([
  ['floorArea', 'floor'],
  ['drainageNeed', 'clay'],
  ['cappingNeed', 'calcined clay'],
  ['soilPlaced', 'placed'],
  ['leavesNeed', 'oak leaves'],
  ['pieces', 'pieces'],
  ['plants', 'plants'],
  ['springtailSeed', 'springtails'],
  ['ventShare', 'vent share'],
  ['lamps', 'lamps'],
  ['drainDays', 'fills in'],
  ['filledMass', 'filled'],
]);

/**
 * What a closed section shows in a column: `clay, L 16.84`, `fills in, d, down to 47 67`; nothing for a section without
 * a main figure.
 */
export function headline(bench: Bench, column: string, section: string, faces: LineFaces): BoxView | undefined {
  const lines = faces.sections.get(section) ?? [];
  const work = lines.filter(({ line }) => line.role === 'work');
  if (work.length > 0) return minutesOf(bench, column, { work: work.map(({ line }) => line.name), section });
  const face = lines.find(({ line }) => headlineOf.has(line.use));
  if (!face) return undefined;
  const box = bench.box(column, face.line.name);
  if (box.value === undefined) return undefined;
  const whole = showValue(box.value, face.line.unit, faces.display);
  const name = headlineOf.get(face.line.use) ?? '';
  const unit = face.unit === 'each' ? '' : face.unit;
  const range = rangeBeside(box, faces);
  const spoken = inList(section, column, unit === '' ? `${name} ${whole}` : `${name} ${whole} ${unit}`, range);
  return headBox(inList(name, unit, range), rangedFigure(box, faces.display) ?? whole, spoken);
}

function inList(...words: readonly string[]): string {
  return words.filter((each) => each !== '').join(', ');
}

function minutesOf(
  bench: Bench,
  column: string,
  { work, section }: { readonly work: readonly string[]; readonly section: string },
): BoxView | undefined {
  let seconds = 0;
  for (const name of work) {
    const { value } = bench.box(column, name);
    if (typeof value !== 'number') return undefined;
    seconds += value;
  }
  const figure = writeNumber(fromBase(seconds, unitOf('min')), 0);
  return headBox('minutes', figure, `${section}, ${column}, ${figure} minutes`);
}

function headBox(said: string, figure: string, spoken: string): BoxView {
  return {
    form: 'flat',
    source: 'house',
    look: 'headline',
    said,
    figure,
    spoken,
    entry: '',
    copied: figure,
    closed: true,
  };
}
