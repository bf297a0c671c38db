import type { OpenCheckView } from '#renderer/panel/panel-view.ts';
import type { Box } from '#shared-calc/bench/bench-types.ts';
import { waitOf } from '#shared-calc/bench/waits.ts';
import { checkMargin } from '#shared-calc/prepare/check-margin.ts';
import { sayMargin } from '#shared-calc/prepare/say-margin.ts';
import { whoDecides } from '#shared-calc/words/who-decides.ts';
import { checkSentence, isOpenCheck, type BoxParts } from './box-view.ts';

/** What a check says that does not surely hold; nothing for one that holds, or for another cell. */
export function openCheckOf(box: Box, parts: BoxParts): OpenCheckView | undefined {
  if (box.line.role !== 'check') return undefined;
  return waitingCheck(box, parts) ?? (isOpenCheck(box) ? failingCheck(box, parts) : undefined);
}

function waitingCheck(box: Box, parts: BoxParts): OpenCheckView | undefined {
  const { name } = box.line;
  const line = waitOf(parts.bench, parts.column, name)?.line.name;
  if (line === undefined) return undefined;
  const label = parts.faces.of(line)?.label ?? line;
  return {
    says: checkSentence(box, parts),
    figures: '',
    decides: '',
    hasCures: false,
    ...(line !== name && { waitsFor: { line, label } }),
  };
}

function failingCheck(box: Box, parts: BoxParts): OpenCheckView {
  const { name, decides = '', cures = [] } = box.line;
  const margin = checkMargin(parts.bench, parts.column, name);
  return {
    says: checkSentence(box, parts),
    figures: margin ? sayMargin(margin, parts.faces.display) : '',
    decides: decides === '' ? '' : `${whoDecides(decides)}.`,
    hasCures: cures.length > 0 && parts.issued === undefined,
  };
}
