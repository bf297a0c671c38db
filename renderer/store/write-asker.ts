import type { BoxPlace } from '#renderer/bench/view-model.ts';
import type { Change } from '#shared-calc/records/change.ts';
import type { LocalValue } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { localChange } from './local-changes.ts';
import { writtenOver, type WriteDesk } from './write-boxes.ts';

/** Says who asked for what a box is written over with; *What changed* tells it beside the box. */
export function writeAsker(desk: WriteDesk, place: BoxPlace, by: LocalValue['by']): Result<Change, string> {
  const written = writtenOver(desk, place);
  if (!written) return failed('Only a local value has somebody who asked for it: write one first.');
  const { size, text, where } = written;
  const label = `${where}, asked for by ${by === 'client' ? 'the client' : 'us'}`;
  return ok(localChange(desk.records, desk.job, [{ size, line: place.row, text, by }], label));
}
