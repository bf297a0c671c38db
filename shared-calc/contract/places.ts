/** One view of the page, by its name in the link. */
function place<const Id extends string>(id: Id, title: string, part = title) {
  return { id, title, part };
}

/** An entry of the rail with one view. */
function alone<const Id extends string>(id: Id, title: string) {
  return { title, parts: [place(id, title)] };
}

/** Every view of the page, in the groups and entries of the rail. `part` is the name of a view beside its siblings. */
export const placeGroups = [
  { of: 'day', entries: [alone('today', 'Today'), alone('jobs', 'Jobs')] },
  {
    of: 'job',
    entries: [
      alone('bench', 'Size bench'),
      alone('quotes', 'Quote'),
      alone('needs', 'Needs'),
      alone('prepare', 'Plan'),
      alone('cards', 'Cards'),
    ],
  },
  {
    of: 'workshop',
    entries: [
      {
        title: 'Buying',
        parts: [
          place('run', 'Shopping run', 'Run'),
          place('prices', 'Missing prices', 'Prices'),
          place('measures', 'Missing measurements', 'Measurements'),
          place('price-lists', 'Price lists', 'Lists'),
          place('orders', 'Orders'),
          place('store', 'Store'),
        ],
      },
      alone('cultures', 'Cultures'),
    ],
  },
  {
    of: 'books',
    entries: [
      {
        title: 'Books',
        parts: [
          place('recipe', 'House recipe', 'Recipe'),
          place('tank-book', 'Tank book', 'Tanks'),
          place('material-book', 'Material book', 'Materials'),
          place('plant-book', 'Plant book', 'Plants'),
          place('culture-book', 'Culture book', 'Cultures'),
          place('animal-book', 'Animal book', 'Animals'),
          place('rate-book', 'Rate book', 'Rates'),
          place('function-book', 'Function book', 'Functions'),
        ],
      },
      {
        title: 'Workshop',
        parts: [place('workshop', 'Workshop settings', 'Settings'), place('keys', 'Keys'), place('about', 'About')],
      },
    ],
  },
] as const;

export type PlaceId = (typeof placeGroups)[number]['entries'][number]['parts'][number]['id'];

export interface Place {
  readonly id: PlaceId;
  /** The heading of the view; no two have the same. */
  readonly title: string;
  readonly part: string;
}

/** One line of the rail: it leads to the first of its views. */
export interface PlaceEntry {
  readonly title: string;
  readonly parts: readonly Place[];
}

const entries: readonly PlaceEntry[] = placeGroups.flatMap((group): readonly PlaceEntry[] => group.entries);

export const places: readonly Place[] = entries.flatMap(({ parts }) => parts);

/** The entry of the rail that a view belongs to. */
export function entryOf(id: PlaceId): PlaceEntry | undefined {
  return entries.find(({ parts }) => parts.some((each) => each.id === id));
}
