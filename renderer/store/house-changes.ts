import type { BoxPlace } from '#renderer/bench/view-model.ts';
import type { ActFault } from '#shared-calc/acts/act-fault.ts';
import { houseText } from '#shared-calc/acts/recipe-acts.ts';
import { squashChanges, type Change } from '#shared-calc/records/change.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { calledByWords } from '#shared-calc/words/called-by-words.ts';
import { sayActFault } from '#shared-calc/words/say-act-fault.ts';
import { sayBoxCause, sayBoxFault } from '#shared-calc/words/say-box-cause.ts';
import type { LineFaces } from './line-faces.ts';
import { textInLabel } from './entry-text.ts';
import { localChange } from './local-changes.ts';
import type { WriteDesk } from './write-boxes.ts';

/** Proposes a box's value as the house's: the recipe takes its text and note, and the box follows the house again. */
export function sendToHouse(desk: WriteDesk, { row, column: key }: BoxPlace): Result<Change, string> {
  const { source, read, records, job, faces } = desk;
  const column = source.columns.find((each) => each.key === key);
  const line = read.byName.get(row);
  const local = column?.written.get(row);
  const written = local ?? source.whole.get(row);
  if (!column || !line || !written) return failed('This follows the house already.');
  if (line.role === 'tank') return failed('A measurement belongs to its tank: change it in the tank book.');
  const house = houseText(read.lines, line, written.text, textInLabel(written.text, line, faces.display));
  if (!house.ok) return failed(sayHouseFault(house.fault, faces));
  const noted = written.note === '' ? house.value : withNote(house.value, written.note);
  const size = local ? column.size : undefined;
  const back = localChange(records, job, [{ size, line: row, text: undefined }], '');
  return ok(squashChanges(house.value.label, [noted, back]));
}

/** Why the house does not take a text, with lines called by their labels. */
export function sayHouseFault(fault: ActFault, faces: LineFaces): string {
  if (fault.kind === 'unreadable') return sayBoxFault(fault.fault, fault.line, calledByWords(faces));
  return fault.kind === 'loop' ? sayBoxCause({ why: 'loop', cycle: fault.cycle }, fault.line) : sayActFault(fault);
}

function withNote(change: Change, note: string): Change {
  return {
    ...change,
    updated: change.updated.map((each) => (each.kind === 'line' ? { ...each, to: { ...each.to, note } } : each)),
  };
}
