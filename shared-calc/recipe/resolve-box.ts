import type { UseName } from '#shared-calc/fields/uses.ts';
import type { BoxSource, ColumnInput } from './column.ts';
import { houseTextOf } from './range-text.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { tankFigures, typedSides } from './tank-figures.ts';

export interface ResolvedText {
  readonly text: string;
  readonly source: BoxSource;
  /** Of tank and survey: the text is as a person typed it. */
  readonly typed?: true;
}

/**
 * The text of each cell of a size. In order of priority: a local value, one for the whole job, what survey
 * or animal kind give, the tank's own measurement, the house. An empty text over the house is a missing figure.
 */
export function textResolver(column: ColumnInput, job: ReadonlyMap<string, string>): (line: Line) => ResolvedText {
  const tank = tankFigures(column.tank);
  const typed = typedSides(column.tank);
  const ofTank = (use: UseName, house: string) =>
    withTyped({ text: tank.get(use) ?? house, source: 'tank' }, typed.has(use));
  return (line) => {
    const local = column.locals.get(line.name);
    if (local !== undefined) return { text: local, source: 'local' };
    const whole = job.get(line.name);
    if (whole !== undefined) return { text: whole, source: 'job' };
    const given = column.given?.get(line.name);
    if (given) return withTyped({ text: given.text, source: given.from }, given.typed);
    if (line.role === 'tank') {
      return line.use ? ofTank(line.use, line.text) : { text: line.text, source: 'tank' };
    }
    return { text: houseTextOf(line), source: 'house' };
  };
}

function withTyped(resolved: ResolvedText, typed = false): ResolvedText {
  return typed ? { ...resolved, typed: true } : resolved;
}
