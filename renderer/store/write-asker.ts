import type { BoxPlace } from '#renderer/bench/view-model.ts';
import type { Change } from '#shared-calc/records/change.ts';
import type { LocalValue } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { calledOf } from './head-view.ts';
import { inSentence } from './line-faces.ts';
import { localChange } from './local-changes.ts';
import type { WriteDesk } from './write-boxes.ts';

/** Says who asked for what a box is written over with; *What changed* tells it beside the box. */
export function writeAsker(
  desk: WriteDesk,
  { row, column: key }: BoxPlace,
  by: LocalValue['by'],
): Result<Change, string> {
  const { source, faces, records, job } = desk;
  const column = source.columns.find((each) => each.key === key);
  const local = column?.written.get(row);
  const written = local ?? source.whole.get(row);
  if (!column || !written) return failed('Only a local value has somebody who asked for it: write one first.');
  const where = `${inSentence(faces.of(row)?.label ?? row)} of ${local ? calledOf(column) : 'the whole job'}`;
  const put = { size: local ? column.size : undefined, line: row, text: written.text, by };
  return ok(localChange(records, job, [put], `${where}, asked for by ${by === 'client' ? 'the client' : 'us'}`));
}
