import type { PaperBlock, PaperCaution, PaperDocument } from '#shared-calc/papers/document.ts';
import { capital } from '#shared-calc/rule/capital.ts';
import { sayUnits } from './say-units.ts';
import { whoDecides } from './who-decides.ts';

/** How a table is written, from the output format. */
export type WriteTable = (
  head: readonly string[],
  rows: readonly (readonly string[])[],
  right?: readonly number[],
) => string;

/** A paper as plain text: a blank line between blocks; empty blocks are left out. */
export function writePaper({ title, blocks }: PaperDocument, table: WriteTable): string {
  const parts = [`${title}\n${'='.repeat(Array.from(title).length)}`];
  for (const [at, block] of blocks.entries()) {
    const text = isBareHeading(block, blocks.slice(at + 1)) ? '' : writeBlock(block, table);
    if (text !== '') parts.push(text);
  }
  return sayUnits(parts.join('\n\n')).replaceAll('\u00a0', ' ');
}

/** A heading whose blocks are all empty. */
function isBareHeading(block: PaperBlock, rest: readonly PaperBlock[]): boolean {
  if (block.is !== 'heading') return false;
  const end = rest.findIndex((each) => each.is === 'heading');
  const under = end === -1 ? rest : rest.slice(0, end);
  return under.length > 0 && under.every(isEmpty);
}

function isEmpty(block: PaperBlock): boolean {
  switch (block.is) {
    case 'list':
      return block.items.length === 0;
    case 'facts':
      return block.rows.every(([, is]) => is === '');
    case 'table':
    case 'cautions':
      return block.rows.length === 0;
    default:
      return block.text === '';
  }
}

function writeBlock(block: PaperBlock, table: WriteTable): string {
  if (isEmpty(block)) return '';
  switch (block.is) {
    case 'heading':
      return `${block.text}\n${'-'.repeat(Array.from(block.text).length)}`;
    case 'text':
      return block.text;
    case 'list':
      return block.items.map((item) => `- ${item}`).join('\n');
    case 'facts':
      return block.rows
        .filter(([, is]) => is !== '')
        .map(([what, is]) => `${what}: ${is}`)
        .join('\n');
    case 'table':
      return table(block.head, block.rows.flatMap(wrapRow), block.right);
    case 'cautions':
      return block.rows.map(writeCaution).join('\n');
  }
}

function writeCaution({ about, says, decides }: PaperCaution): string {
  const sentence = `${about === '' ? '' : `${capital(about)}: `}${says}`;
  return decides === '' ? `! ${sentence}` : `! ${sentence} ${whoDecides(decides)}.`;
}

/** The most characters of a cell on one line. */
const WIDEST = 60;

/** A row whose long cells continue in the rows under it. */
function wrapRow(row: readonly string[]): readonly (readonly string[])[] {
  const cells = row.map(wrapWords);
  const height = Math.max(...cells.map((lines) => lines.length));
  return Array.from({ length: height }, (_, at) => cells.map((lines) => lines[at] ?? ''));
}

function wrapWords(text: string): readonly string[] {
  const lines = [''];
  for (const word of text.split(' ')) {
    const line = lines.at(-1) ?? '';
    if (line === '' || line.length + word.length < WIDEST)
      lines[lines.length - 1] = line === '' ? word : `${line} ${word}`;
    else lines.push(word);
  }
  return lines;
}
