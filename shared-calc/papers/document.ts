import type { StepCaution } from '#shared-calc/prepare/cautions.ts';

/** A caution on a paper; `about` is the step it belongs to, empty if its position on the paper shows the step. */
export interface PaperCaution {
  readonly about: string;
  readonly says: string;
  readonly decides: string;
}

export type PaperBlock =
  | { readonly is: 'heading'; readonly text: string }
  | { readonly is: 'text'; readonly text: string }
  | { readonly is: 'list'; readonly items: readonly string[] }
  /** Names and figures; a row without a figure is left out. */
  | { readonly is: 'facts'; readonly rows: readonly (readonly [what: string, is: string])[] }
  | {
      readonly is: 'table';
      readonly head: readonly string[];
      readonly rows: readonly (readonly string[])[];
      /** Columns of figures, counted from 0. */
      readonly right?: readonly number[];
    }
  | { readonly is: 'cautions'; readonly rows: readonly PaperCaution[] };

/** A paper for text and page output: no fonts and no positions. */
export interface PaperDocument {
  readonly title: string;
  readonly blocks: readonly PaperBlock[];
}

/** All cautions of a paper, each once. */
export function cautionsIn({ blocks }: PaperDocument): readonly PaperCaution[] {
  const all = blocks.flatMap((block) => (block.is === 'cautions' ? block.rows : []));
  return [...new Map(all.map((each) => [`${each.says}\n${each.decides}`, each])).values()];
}

export function heading(text: string): PaperBlock {
  return { is: 'heading', text };
}

export function paragraph(text: string): PaperBlock {
  return { is: 'text', text };
}

export function stepCautionsBlock(cautions: readonly StepCaution[]): PaperBlock {
  return {
    is: 'cautions',
    rows: cautions.map(({ step, caution, decides }) => ({ about: step, says: caution, decides })),
  };
}
