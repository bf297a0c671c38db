import { places } from '#shared-calc/contract/places.ts';
import { guides } from './guides.ts';
import { placeHelp, type PlaceHelp } from './place-help.ts';
import type { Word } from './word.ts';
import { wordTable } from './word-table.ts';

/** One page of the help. No two have the same id. */
export type Topic = { readonly id: string; readonly title: string } & (
  | { readonly is: 'place'; readonly help: PlaceHelp }
  | { readonly is: 'word'; readonly word: Word }
  | { readonly is: 'guide'; readonly says: readonly string[] }
);

export const topics: readonly Topic[] = [
  ...Object.entries(guides).map(([id, guide]): Topic => ({ is: 'guide', id, ...guide })),
  ...places.map(({ id, title }): Topic => ({ is: 'place', id, title, help: placeHelp[id] })),
  ...Object.entries(wordTable).map(([id, word]): Topic => ({ is: 'word', id, title: word.word, word })),
];

const byId = new Map(topics.map((topic) => [topic.id, topic]));

export function topicOf(id: string): Topic | undefined {
  return byId.get(id);
}
