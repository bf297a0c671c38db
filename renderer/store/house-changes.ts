import type { BoxPlace } from '#renderer/bench/view-model.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { squashChanges } from '#shared-calc/records/change.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { calledByWords, calledLine } from '#shared-calc/words/called-by-words.ts';
import { sayBoxCause, sayBoxFault } from '#shared-calc/words/say-box-cause.ts';
import { textInLabel } from './entry-text.ts';
import { findCycle, type ReadLines } from './find-cycle.ts';
import type { LineFaces } from './line-faces.ts';
import { localChange } from './local-changes.ts';
import type { WriteDesk } from './write-boxes.ts';

interface House {
  readonly faces: LineFaces;
  readonly read: ReadLines;
}

/** Writes a line's figure or rule in the house recipe; what cannot be read or makes a cycle is refused. */
export function houseText({ faces, read }: House, line: Line, text: string): Result<Change, string> {
  const reading = read.reader.read(line, text);
  if (reading.is === 'faulty') return failed(sayBoxFault(reading.fault, line.name, calledByWords(faces)));
  const cycle =
    reading.is === 'rule'
      ? findCycle(read, (each) => (each.name === line.name ? text : each.text), [line.name])
      : undefined;
  if (cycle) return failed(sayBoxCause({ why: 'loop', cycle }, line.name));
  const label = `${calledLine(faces, line.name)} of the house to ${textInLabel(text, line, faces.display)}`;
  return ok(updateLine(line, { text }, label.slice(0, 300)));
}

/** Proposes a box's value as the house's: the recipe takes its text and note, and the box follows the house again. */
export function sendToHouse(desk: WriteDesk, { row, column: key }: BoxPlace): Result<Change, string> {
  const { source, read, records, job } = desk;
  const column = source.columns.find((each) => each.key === key);
  const line = read.byName.get(row);
  const local = column?.written.get(row);
  const written = local ?? source.whole.get(row);
  if (!column || !line || !written) return failed('This follows the house already.');
  if (line.role === 'tank') return failed('A measurement belongs to its tank: change it in the tank book.');
  const house = houseText(desk, line, written.text);
  if (!house.ok) return house;
  const noted = written.note === '' ? house.value : withNote(house.value, written.note);
  const size = local ? column.size : undefined;
  const back = localChange(records, job, [{ size, line: row, text: undefined }], '');
  return ok(squashChanges(house.value.label, [noted, back]));
}

export function updateLine(line: Line, fields: Partial<Line>, label: string): Change {
  return { label, added: [], updated: [{ kind: 'line', from: line, to: { ...line, ...fields } }], removed: [] };
}

function withNote(change: Change, note: string): Change {
  return {
    ...change,
    updated: change.updated.map((each) => (each.kind === 'line' ? { ...each, to: { ...each.to, note } } : each)),
  };
}
