import { cautionInUnits } from '#shared-calc/cautions/caution-in-units.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { PaperBlock, PaperCaution, PaperDocument } from './document.ts';

/** A paper with the figures of its cautions in the workshop's units. */
export function documentInUnits(document: PaperDocument, display: Display): PaperDocument {
  return { ...document, blocks: document.blocks.map((block) => blockInUnits(block, display)) };
}

function blockInUnits(block: PaperBlock, display: Display): PaperBlock {
  const said = (rows: readonly PaperCaution[]) => rows.map((row) => cautionInUnits(row, display));
  if (block.is === 'cautions') return { ...block, rows: said(block.rows) };
  return block.is === 'table' && block.cautions ? { ...block, cautions: block.cautions.map(said) } : block;
}
