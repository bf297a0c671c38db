import { findUnit, unitSymbols } from '#shared-calc/quantity/unit.ts';
import { figuresFor } from './complete-figure.ts';
import { bestFirst, noCompletions, type Completion, type Completions, type Spot } from './completion.ts';

/** A number that is not the end of a name, with what is written behind it so far. */
const begun = /(?:^|[^\w.])(?:\d+(?:\.\d+)?|\.\d+)(\s*)((?:[^\s\d(),"<>=*+^-][^\s(),"<>=*+^-]*)?)$/u;

const restOfUnit = /^[\p{L}\p{N}_%]*/u;

const units: readonly Completion[] = unitSymbols.map((label) => ({ is: 'unit', text: label, label }));

/**
 * Behind a number: units, also behind the stroke of a compound, where what is divided by may be a line as well.
 * `undefined` where no number stands before the cursor.
 */
export function completeUnit(spot: Spot): Completions | undefined {
  const { text, cursor, inside } = spot;
  const found = begun.exec(text.slice(0, cursor));
  if (!found) return undefined;
  const [, space = '', typed = ''] = found;
  if (space + typed !== '') return unitsBehind(spot, typed);
  return inside?.is === 'number' ? noCompletions(cursor) : undefined;
}

function unitsBehind(spot: Spot, typed: string): Completions | undefined {
  const stroke = Math.max(typed.lastIndexOf('/'), typed.lastIndexOf('.'));
  if (stroke >= 0 && !findUnit(typed.slice(0, stroke))) return undefined;
  const part = typed.slice(stroke + 1);
  const options = typed[stroke] === '/' ? [...units, ...figuresFor(spot)] : units;
  const rest = restOfUnit.exec(spot.text.slice(spot.cursor))?.[0] ?? '';
  return { from: spot.cursor - part.length, to: spot.cursor + rest.length, options: bestFirst(options, part) };
}
