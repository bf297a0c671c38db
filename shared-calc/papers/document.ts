import type { SaidCaution } from '#shared-calc/cautions/all-cautions.ts';

/** A caution of the table on a paper, or a sentence of this order alone, such as a check that fails: it has no id. */
export interface PaperCaution extends Partial<Pick<SaidCaution, 'id' | 'source' | 'at'>> {
  /** In front of the sentence; may be empty. */
  readonly about: string;
  readonly says: string;
  readonly decides: string;
  /** Stated in full elsewhere on the paper: counted, but not written again. */
  readonly elsewhere?: true;
}

/** A name and its figure or words; `decides` is who decides about it. */
export type PaperFact = readonly [what: string, is: string, decides?: string];

export interface PaperHeading {
  readonly is: 'heading';
  readonly text: string;
  /** A step of work, to be ticked. */
  readonly step?: true;
  /** Said small beside it. */
  readonly aside?: string;
}

export interface PaperTable {
  readonly is: 'table';
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** Columns of figures, counted from 0. */
  readonly right?: readonly number[];
  /** The first column names the group of a row; groups stand over their rows or beside them. */
  readonly groups?: 'over' | 'beside';
  /** Columns that explain the one before them. */
  readonly small?: readonly number[];
  /** The heads add nothing for a reader who sees the table. */
  readonly quiet?: true;
  /** Each row is to be ticked. */
  readonly tick?: true;
  /** Columns to write in by hand. */
  readonly write?: readonly string[];
  /** Columns of boxes to tick. */
  readonly boxes?: readonly string[];
  /** The row that matters most. */
  readonly main?: number;
  /** By row. */
  readonly cautions?: readonly (readonly PaperCaution[])[];
}

export type PaperBlock =
  /** Begins a page of its own, one a size or a supplier. */
  | { readonly is: 'sheet'; readonly text: string }
  | PaperHeading
  | { readonly is: 'text'; readonly text: string }
  /** `tick`: each item is to be ticked; `write`: what is written beside each item by hand; `short`: two fit on a line. */
  | {
      readonly is: 'list';
      readonly items: readonly string[];
      readonly tick?: true;
      readonly write?: string;
      readonly short?: true;
    }
  /** Names and figures; a row without a figure is left out. `main` is the name of the row that matters most. */
  | {
      readonly is: 'facts';
      readonly rows: readonly PaperFact[];
      readonly look?: 'sums' | 'run in' | 'settings';
      readonly main?: string;
    }
  | PaperTable
  /** Days of one act, each to be ticked. */
  | { readonly is: 'days'; readonly text: string; readonly items: readonly string[] }
  /** `bare`: the place on the paper shows what each is about; `brief`: who decides, without where it comes from. */
  | {
      readonly is: 'cautions';
      readonly rows: readonly PaperCaution[];
      readonly bare?: true;
      readonly brief?: true;
    }
  /** A label to cut out; its first line is its name. */
  | { readonly is: 'label'; readonly text: string; readonly items: readonly string[] }
  /** Where the page has a drawing. */
  | { readonly is: 'picture' }
  /** Lines to sign on. */
  | { readonly is: 'sign'; readonly items: readonly string[] };

/** A paper for text and page output: no fonts and no positions. */
export interface PaperDocument {
  readonly title: string;
  readonly blocks: readonly PaperBlock[];
}

export interface PaperSection {
  /** None before the first heading. */
  readonly heading: PaperHeading | undefined;
  readonly blocks: readonly PaperBlock[];
}

export interface PaperSheet {
  /** None if the paper is one sheet. */
  readonly title: string | undefined;
  readonly sections: readonly PaperSection[];
}

/** The sheets of a paper and their sections, without empty blocks and without headings that nothing stands under. */
export function sheetsOf({ blocks }: PaperDocument): readonly PaperSheet[] {
  return splitBefore(blocks, 'sheet').map((part) => {
    const [first] = part;
    const title = first?.is === 'sheet' ? first.text : undefined;
    const sections = splitBefore(title === undefined ? part : part.slice(1), 'heading');
    return { title, sections: sections.flatMap(sectionOf) };
  });
}

function sectionOf(blocks: readonly PaperBlock[]): readonly PaperSection[] {
  const [first] = blocks;
  const title = first?.is === 'heading' ? first : undefined;
  const under = title ? blocks.slice(1) : blocks;
  const full = under.filter((block) => !isEmpty(block));
  return full.length > 0 || (title && under.length === 0) ? [{ heading: title, blocks: full }] : [];
}

function splitBefore(blocks: readonly PaperBlock[], kind: PaperBlock['is']): readonly (readonly PaperBlock[])[] {
  const parts: PaperBlock[][] = [];
  for (const block of blocks) {
    const last = parts.at(-1);
    if (!last || block.is === kind) parts.push([block]);
    else last.push(block);
  }
  return parts;
}

function isEmpty(block: PaperBlock): boolean {
  switch (block.is) {
    case 'list':
    case 'days':
    case 'label':
    case 'sign':
      return block.items.length === 0;
    case 'facts':
      return block.rows.every(([, is]) => is === '');
    case 'table':
      return block.rows.length === 0;
    case 'cautions':
      return block.rows.every(({ elsewhere }) => elsewhere);
    case 'picture':
      return false;
    default:
      return block.text === '';
  }
}

/** Rows of a table under the name of each group. */
export function groupsIn({ rows }: PaperTable): readonly (readonly [name: string, rows: PaperTable['rows']])[] {
  return [...Map.groupBy(rows, ([name = '']) => name)];
}

/** All cautions of a paper, each once. */
export function cautionsIn({ blocks }: PaperDocument): readonly PaperCaution[] {
  const all = blocks.flatMap((block) => {
    if (block.is === 'table') return block.cautions?.flat() ?? [];
    return block.is === 'cautions' ? block.rows : [];
  });
  return [...new Map(all.map((caution) => [`${caution.says}\n${caution.decides}`, caution])).values()];
}

export function heading(text: string): PaperBlock {
  return { is: 'heading', text };
}

export function paragraph(text: string): PaperBlock {
  return { is: 'text', text };
}

export function sheet(text: string): PaperBlock {
  return { is: 'sheet', text };
}

export function cautionsBlock(rows: readonly PaperCaution[]): PaperBlock {
  return { is: 'cautions', rows };
}
