import type { BoxSource, ColumnInput } from './column.ts';
import { houseTextOf } from './range-text.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { tankFigures } from './tank-figures.ts';

export interface ResolvedText {
  readonly text: string;
  readonly source: BoxSource;
}

/**
 * The text of each cell of a size. In order of priority: a local value, one for the whole job, what survey
 * or animal kind give, the tank's own measurement, the house. An empty text over the house is a missing figure.
 */
export function textResolver(column: ColumnInput, job: ReadonlyMap<string, string>): (line: Line) => ResolvedText {
  const tank = tankFigures(column.tank);
  return (line) => {
    const local = column.locals.get(line.name);
    if (local !== undefined) return { text: local, source: 'local' };
    const whole = job.get(line.name);
    if (whole !== undefined) return { text: whole, source: 'job' };
    const given = column.given?.get(line.name);
    if (given) return { text: given.text, source: given.from };
    if (line.role === 'tank') {
      return { text: (line.use && tank.get(line.use)) ?? line.text, source: 'tank' };
    }
    return { text: houseTextOf(line), source: 'house' };
  };
}
