import { choice, orEmpty, words } from './field.ts';

export const sourceMarks = ['measured', 'supplier', 'published', 'practice', 'memory', 'house'] as const;

/** Where a figure of the house comes from. A record without a mark claims nothing. */
export type SourceMark = (typeof sourceMarks)[number];

/** What a record says of where its figures come from. */
export interface Sourced {
  readonly source?: SourceMark | undefined;
  readonly sourceNote?: string | undefined;
}

export const noSource = 'no source given';

export const sourceFields = {
  source: orEmpty(
    choice('Figures from', sourceMarks, {
      list: 'source',
      empty: noSource,
      labels: {
        measured: 'measured by us',
        supplier: 'from the supplier',
        practice: 'common practice',
        memory: 'from memory',
        house: 'our own choice',
      },
    }),
  ),
  sourceNote: orEmpty(
    words('Day, supplier or publication', {
      list: 'source note',
      help: 'the day it was measured, who supplied it, or the publication with its address',
    }),
  ),
};
