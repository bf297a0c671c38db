/** Where a figure comes from. */
export const sourceMarks = ['measured', 'supplier', 'published', 'practice', 'memory', 'house'] as const;

export type SourceMark = (typeof sourceMarks)[number];

export const sourceWords = {
  measured: 'measured by us',
  supplier: 'supplier',
  published: 'published',
  practice: 'common practice',
  memory: 'from memory',
  house: 'our own choice',
} as const satisfies Readonly<Record<SourceMark, string>>;
