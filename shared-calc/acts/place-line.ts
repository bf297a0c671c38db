import { z } from 'zod';
import { inSentence, lineLabel } from '#shared-calc/recipe/line-label.ts';
import { linesOf } from '#shared-calc/recipe/lines-of.ts';
import { emptyChange, type Change } from '#shared-calc/records/change.ts';
import type { Line, Records } from '#shared-calc/records/records.ts';
import { sortKeyBetween } from '#shared-calc/records/sort-key.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { act } from './act.ts';
import { findLine } from './find-record.ts';
import { linesWritten } from './line-changes.ts';

const PlaceLine = z.strictObject({
  line: z.string().describe('The id of a line, such as H1.drainage.'),
  before: z.string().nullable().describe('The id of the line that it comes to stand before; null puts it last.'),
});

/** Moves a line to any place of its recipe; it joins the section of the line that it comes to stand before. */
export const placeLine = act<z.infer<typeof PlaceLine>>({
  name: 'placeLine',
  says: 'Moves a line before another of its recipe, into the section of that line, or to the end.',
  input: PlaceLine,
  run: ({ records }, { line: id, before }) => {
    const found = findLine(records, id);
    if (!found.ok) return found;
    const line = found.value;
    const others = linesOf(records, line.recipe).filter((each) => each.id !== line.id);
    const at = before === null ? others.length : others.findIndex((each) => each.id === before);
    if (before === line.id) return ok(emptyChange(''));
    if (at < 0) return failed({ kind: 'no-record', record: { kind: 'line', id: before ?? '' } });
    return ok(placed(records, line, others, at));
  },
});

/** A line that is there already is left alone. */
function placed(records: Records, line: Line, others: readonly Line[], at: number): Change {
  const [above, below] = [others[at - 1], others[at]];
  const section = (below ?? above ?? line).section;
  if (linesOf(records, line.recipe).indexOf(line) === at && section === line.section) return emptyChange('');
  const order = sortKeyBetween(above?.order, below?.order);
  return linesWritten(records, `${inSentence(lineLabel(line))} moved`, [{ ...line, section, order }]);
}
