import type { OpenCheckView } from '#renderer/panel/panel-view.ts';
import type { Box } from '#shared-calc/bench/bench-types.ts';
import { waitOf } from '#shared-calc/bench/waits.ts';
import { checkMargin } from '#shared-calc/prepare/check-margin.ts';
import { sayMargin } from '#shared-calc/prepare/say-margin.ts';
import { whoDecides } from '#shared-calc/words/who-decides.ts';
import { checkSentence, isOpenCheck, type BoxParts } from './box-view.ts';

/** What a check says that does not surely hold; nothing for one that holds, or for another cell. */
export function openCheckOf(box: Box, parts: BoxParts): OpenCheckView | undefined {
  const { bench, column, faces, issued } = parts;
  const { line } = box;
  if (line.role !== 'check') return undefined;
  const wait = waitOf(bench, column, line.name);
  if (wait) {
    const to =
      wait.line.name === line.name
        ? {}
        : { waitsFor: { line: wait.line.name, label: faces.of(wait.line.name)?.label ?? '' } };
    return { says: checkSentence(box, parts), figures: '', decides: '', hasCures: false, ...to };
  }
  if (!isOpenCheck(box)) return undefined;
  const margin = checkMargin(bench, column, line.name);
  const { decides = '', cures = [] } = line;
  return {
    says: checkSentence(box, parts),
    figures: margin ? sayMargin(margin, faces.display) : '',
    decides: decides === '' ? '' : `${whoDecides(decides)}.`,
    hasCures: cures.length > 0 && issued === undefined,
  };
}
