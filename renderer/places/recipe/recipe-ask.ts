import type { Signal } from '@preact/signals';

/** Which dialog of the place is open; a section is the one to remove. */
export type RecipeAsk =
  | 'new'
  | 'fork'
  | 'differences'
  | 'take lines'
  | 'add line'
  | 'replace'
  | { readonly section: string };

export type Asked = Signal<RecipeAsk | undefined>;
