/** What a new book can begin with. */
export const beginnings = ['full', 'plain', 'house', 'empty'] as const;

export type Beginning = (typeof beginnings)[number];

/** Those that a person is offered, with what they hold; `plain` is what worked examples stand on. */
export const offeredBeginnings: readonly {
  readonly start: Beginning;
  readonly label: string;
  readonly holds: string;
}[] = [
  {
    start: 'full',
    label: 'the demo workshop in full swing',
    holds: 'To look around in: names, prices, stock and jobs are invented.',
  },
  {
    start: 'house',
    label: 'mine, with the house recipes',
    holds:
      'Recipes, materials with their packs, plants, cultures and animals. Tanks, suppliers, prices, wages, margins, taxes and terms are yours to give.',
  },
  {
    start: 'empty',
    label: 'mine, empty',
    holds: 'No recipe, no tank, no material: only the groups of a quote, without a figure.',
  },
];
