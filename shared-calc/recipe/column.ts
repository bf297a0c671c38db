import type { Tank } from '#shared-calc/records/records.ts';

/** Who wrote what stands in a box. */
export type BoxSource = 'tank' | 'house' | 'job' | 'local';

/** What a size is called: by the name it was given, else by its key. */
export function calledOf({ label, key }: Pick<ColumnInput, 'label' | 'key'>): string {
  return label === '' ? key : label;
}

/** One size as it enters the bench. */
export interface ColumnInput {
  /** `T07`, or `T07#2` for the second column of a tank. */
  readonly key: string;
  readonly tank: Tank;
  /** The name it was given; empty where it has none. */
  readonly label: string;
  readonly count: number;
  /** Names of lines written over for this size, with their text. */
  readonly locals: ReadonlyMap<string, string>;
}
