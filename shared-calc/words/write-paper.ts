import {
  groupsIn,
  sheetsOf,
  type PaperBlock,
  type PaperCaution,
  type PaperDocument,
  type PaperFact,
  type PaperHeading,
  type PaperTable,
} from '#shared-calc/papers/document.ts';
import { capital } from '#shared-calc/rule/capital.ts';
import { sayOnPaper } from './say-on-paper.ts';
import { decidedOnPaper, whoDecides } from './who-decides.ts';

/** How a table is written, from the output format. */
export type WriteTable = (
  head: readonly string[],
  rows: readonly (readonly string[])[],
  right?: readonly number[],
) => string;

/** A paper as plain text: a blank line between blocks. */
export function writePaper(document: PaperDocument, table: WriteTable): string {
  const parts = sheetsOf(document).flatMap(({ title, sections }) => [
    ...(title === undefined ? [] : [underlined(title)]),
    ...sections.flatMap(({ heading, blocks }) => [
      ...(heading ? [underlined(headingWords(heading))] : []),
      ...blocks.flatMap((block) => writeBlock(block, table)),
    ]),
  ]);
  const whole = [underlined(document.title, '='), ...parts].filter((part) => part !== '').join('\n\n');
  return sayOnPaper(whole).replaceAll('\u00a0', ' ');
}

function underlined(text: string, sign = '-'): string {
  return `${text}\n${sign.repeat(Array.from(text).length)}`;
}

function headingWords({ text, aside }: PaperHeading): string {
  return aside === undefined ? text : `${text}, ${aside}`;
}

function writeBlock(block: PaperBlock, table: WriteTable): string | readonly string[] {
  switch (block.is) {
    case 'list':
      return listed(block.items);
    case 'facts':
      return block.rows
        .filter(([, is]) => is !== '')
        .map(writeFact)
        .join('\n');
    case 'table':
      return writeTable(block, table);
    case 'days':
      return `${block.text}: ${block.items.join('; ')}`;
    case 'cautions':
      return writeCautions(shownCautions(block));
    case 'label':
      return [underlined(block.text), listed(block.items)];
    case 'sign':
      return block.items.map((item) => `${item}: ${'_'.repeat(20)}`).join('\n');
    case 'picture':
      return '';
    default:
      return block.text;
  }
}

function listed(items: readonly string[]): string {
  return items.map((item) => `- ${item}`).join('\n');
}

function writeFact([what, is, decides]: PaperFact): string {
  return `${what}: ${is}${decides === undefined ? '' : ` ${whoDecides(decides)}.`}`;
}

function writeTable(block: PaperTable, table: WriteTable): readonly string[] {
  const { head, rows, right, write = [], boxes = [], groups, cautions = [] } = block;
  const cautioned = writeCautions(cautions.flat());
  if (groups === 'over') {
    const columns = right?.map((at) => at - 1);
    return groupsIn(block).flatMap(([name, some]) => [
      underlined(name),
      table(head.slice(1), some.map((row) => row.slice(1)).flatMap(wrapRow), columns),
    ]);
  }
  return [table([...head, ...write, ...boxes], rows.flatMap(wrapRow), right), cautioned];
}

function shownCautions({ rows, bare, brief }: PaperBlock & { readonly is: 'cautions' }): readonly PaperCaution[] {
  return rows.map(({ source, ...row }) => ({
    ...row,
    ...(bare && { about: '' }),
    ...(source !== undefined && !brief && { source }),
  }));
}

function writeCautions(rows: readonly PaperCaution[]): string {
  return rows
    .filter(({ elsewhere }) => !elsewhere)
    .map(writeCaution)
    .join('\n');
}

function writeCaution(caution: PaperCaution): string {
  const { about, says, decides } = caution;
  const sentence = `${about === '' ? '' : `${capital(about)}: `}${says}`;
  return decides === '' ? `! ${sentence}` : `! ${sentence} ${decidedOnPaper(caution)}`;
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
