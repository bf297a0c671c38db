import type { Tank } from '#shared-calc/records/records.ts';

/** The source of a cell's text. */
export type BoxSource = 'tank' | 'house' | 'job' | 'local';

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
}
