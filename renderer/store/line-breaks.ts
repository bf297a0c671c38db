import { boxReader } from '#shared-calc/bench/box-reader.ts';
import { lineLabel } from '#shared-calc/papers/bench-csv.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { namesIn } from '#shared-calc/rule/tree.ts';
import { sayBoxFault } from '#shared-calc/words/say-box-cause.ts';

/** A line whose rule can be read now and could not be after a change. */
export interface Break {
  readonly line: string;
  readonly label: string;
  readonly says: string;
}

/** What would no longer be read if a recipe's lines were these instead. */
export function breaksOf(before: readonly Line[], after: readonly Line[]): readonly Break[] {
  const faulty = new Set(faultsIn(before).map((each) => each.line));
  return faultsIn(after).filter((each) => !faulty.has(each.line));
}

function faultsIn(lines: readonly Line[]): readonly Break[] {
  const reader = boxReader(lines);
  return lines.flatMap((line) => {
    const reading = reader.read(line, line.text);
    if (reading.is !== 'faulty') return [];
    return [{ line: line.name, label: lineLabel(line), says: sayBoxFault(reading.fault, line.name) }];
  });
}

/** Lines whose rule or check sentence reads this one. */
export function readersOf(lines: readonly Line[], name: string): readonly Line[] {
  const reader = boxReader(lines);
  return lines.filter((line) => {
    if (line.says?.includes(`{${name}}`)) return true;
    const reading = reader.read(line, line.text);
    return reading.is === 'rule' && namesIn(reading.rule).includes(name);
  });
}

/** "Room for water, Drainage fills in and 3 more". */
export function sayBreaks(breaks: readonly Pick<Break, 'label'>[]): string {
  const labels = breaks.slice(0, 4).map((each) => each.label);
  return breaks.length > 4 ? `${labels.join(', ')} and ${breaks.length - 4} more` : labels.join(', ');
}
