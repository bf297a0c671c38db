import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { LinePlace, UseName } from '#shared-calc/fields/uses.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { isExpected, lineFor, linesAs } from '#shared-calc/recipe/lines-by-use.ts';
import { tankShapes } from '#shared-calc/fields/tank.ts';
import type { Line, Tank } from '#shared-calc/records/records.ts';
import type { SectionFigures } from './section-figures.ts';

/** The value of a line of the size, in base units; `undefined` while it is not known. */
type ValueOf = (line: Line) => number | string | boolean | undefined;

/** The section of a size of a bench. */
export function benchSection(bench: Bench, column: string): SectionFigures {
  const lines = bench.lines(column);
  const tank = bench.input().columns.find((each) => each.key === column)?.tank.shape ?? 'rectangle';
  return sectionOf(lines, tank, ({ name }) => bench.box(column, name).value);
}

/** The section of a size. A layer or part its recipe does not have is 0; one it should have is not known. */
export function sectionOf(lines: readonly Line[], tank: Tank['shape'], valueOf: ValueOf): SectionFigures {
  const figure = (line: Line | undefined, unit: string) => {
    const value = line && valueOf(line);
    return typeof value === 'number' ? fromBase(value, unitOf(unit)) : undefined;
  };
  const part = (use: UseName, unit = 'mm') => {
    const line = lineFor(lines, use);
    return line || isExpected(lines, use) ? figure(line, unit) : 0;
  };
  const layer = (place: LinePlace) => {
    const line = linesAs(lines, 'layer').find((each) => each.place === place);
    return line ? figure(line, 'mm') : 0;
  };
  const shape = lineFor(lines, 'tankShape');
  return {
    shape: tankShapes.find((each) => each === (shape && valueOf(shape))) ?? tank,
    overallDepth: part('overallDepth'),
    insideHeight: part('insideHeight'),
    damHeight: part('damHeight'),
    glass: part('glass'),
    baseGlass: part('baseGlass'),
    frontBow: part('frontBow'),
    sideReturn: part('sideReturn'),
    frontVent: part('frontVent'),
    drainage: layer('drainage'),
    drainGap: part('drainGap'),
    meshThickness: part('meshThickness'),
    meshUpturn: part('meshUpturn'),
    capping: layer('capping'),
    beadWidth: part('beadWidth'),
    beadHeight: part('beadHeight'),
    soilFront: layer('soil'),
    soilRise: part('soilRise'),
    litter: layer('litter'),
    coverVent: part('coverVent'),
    lamps: part('lamps', 'each'),
  };
}
