import type { Sourced } from '#shared-calc/fields/source.ts';
import type { AnimalKind, Line, Tank } from '#shared-calc/records/records.ts';

/** The source of a cell's text. */
export type BoxSource = 'tank' | 'house' | Giver | 'job' | 'local';

/** What gives a line its figure for a job: what was asked at the place, or the kind of animal. */
export const givers = ['survey', 'kind'] as const;

export type Giver = (typeof givers)[number];

export interface GivenText {
  /** As the book stores it; empty is a figure that is missing. */
  readonly text: string;
  readonly from: Giver;
  /** The text is as a person typed it. */
  readonly typed?: true;
  /** Where the giver has the figure from, if it says so. */
  readonly source?: Sourced;
}

/** What a size is for. */
export interface SizeAnimals {
  readonly kind?: AnimalKind;
  /** In one build: 0 for plants only, left out while nobody has said. */
  readonly count?: number;
}

/** The words for a size: its own name, otherwise its key. */
export function calledOf({ label, key }: Pick<ColumnInput, 'label' | 'key'>): string {
  return label === '' ? key : label;
}

/** One size as input of the bench. */
export interface ColumnInput {
  /** `T07`, or `T07#2` for the second column of a tank. */
  readonly key: string;
  readonly tank: Tank;
  /** The given name; empty if it has none. */
  readonly label: string;
  readonly count: number;
  /** Texts of lines written over for this size, by name. */
  readonly locals: ReadonlyMap<string, string>;
  /** Texts that survey or kind give to lines, by name; left out if they give none. */
  readonly given?: ReadonlyMap<string, GivenText>;
  /** Left out for an order without a job. */
  readonly animals?: SizeAnimals;
  /** The recipe that it has for itself; left out: that of its job or order. */
  readonly recipe?: string;
  /** The lines that it is worked from, where the sizes of a bench have several lists of them; left out: the bench's. */
  readonly lines?: readonly Line[];
}
