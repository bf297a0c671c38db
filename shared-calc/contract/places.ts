/** Every view of the page, by its name in the link, in the groups of the rail. */
export const placeGroups = [
  [
    { id: 'jobs', title: 'Jobs board' },
    { id: 'bench', title: 'Size bench' },
    { id: 'quotes', title: 'Quotes' },
  ],
  [
    { id: 'needs', title: 'Needs list' },
    { id: 'run', title: 'Shopping run' },
    { id: 'prepare', title: 'Prep plan' },
    { id: 'cultures', title: 'Culture board' },
    { id: 'store', title: 'Store' },
  ],
  [
    { id: 'recipe', title: 'House recipe' },
    { id: 'tank-book', title: 'Tank book' },
    { id: 'material-book', title: 'Material book' },
    { id: 'plant-book', title: 'Plant book' },
    { id: 'culture-book', title: 'Culture book' },
    { id: 'animal-book', title: 'Animal book' },
    { id: 'rate-book', title: 'Rate book' },
    { id: 'function-book', title: 'Function book' },
  ],
  [{ id: 'workshop', title: 'Workshop' }],
] as const;

export type PlaceId = (typeof placeGroups)[number][number]['id'];

export interface Place {
  readonly id: PlaceId;
  readonly title: string;
}

export const places: readonly Place[] = placeGroups.flat();
