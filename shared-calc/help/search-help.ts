import { tradeFunctions } from '#shared-calc/trade/all-functions.ts';
import { keyGroups } from './key-groups.ts';
import { plainHelp } from './help-text.ts';
import { sayMainAct } from './say-topic.ts';
import { topicOf, topics, type Topic } from './topic.ts';

/** One thing found: a topic, a function of the function book, or a key. */
export type HelpHit =
  | { readonly is: 'topic'; readonly topic: Topic }
  | { readonly is: 'function'; readonly name: string; readonly title: string }
  | { readonly is: 'key'; readonly keys: string; readonly does: string };

interface Entry {
  readonly hit: HelpHit;
  /** What it is called. */
  readonly names: string;
  /** All that it says. */
  readonly text: string;
}

const titleOf = (id: string) => topicOf(id)?.title ?? id;

const entries: readonly Entry[] = [
  ...topics.map((topic): Entry => ({ hit: { is: 'topic', topic }, names: topic.title, text: textOf(topic) })),
  ...keyGroups.flatMap(({ keys }) =>
    keys.map(([key, does]): Entry => ({ hit: { is: 'key', keys: key, does }, names: key, text: does })),
  ),
  ...tradeFunctions.map(({ name, title, help }): Entry => ({
    hit: { is: 'function', name, title },
    names: `${title} ${name.replaceAll('_', ' ')} ${name}`,
    text: help,
  })),
].map(({ hit, names, text }) => ({ hit, names: names.toLowerCase(), text: text.toLowerCase() }));

function textOf(topic: Topic): string {
  if (topic.is === 'word') return plainHelp(topic.word.says, titleOf);
  if (topic.is === 'guide') return topic.says.map((says) => plainHelp(says, titleOf)).join(' ');
  return [topic.help.what, ...topic.help.acts.map(sayMainAct)].join(' ');
}

/** What has all these words, in its name first, then in its text. Topics, keys and functions are searched together. */
export function searchHelp(typed: string): readonly HelpHit[] {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  if (words.length === 0) return [];
  const has = (text: string) => words.every((word) => text.includes(word));
  const rank = ({ names, text }: Entry) => {
    if (words.some((word) => names === word || names.startsWith(word)) && has(names)) return 0;
    if (has(names)) return 1;
    return has(`${names} ${text}`) ? 2 : undefined;
  };
  const ranked = entries.flatMap((entry) => {
    const at = rank(entry);
    return at === undefined ? [] : [{ at, hit: entry.hit }];
  });
  return ranked.toSorted((one, other) => one.at - other.at).map(({ hit }) => hit);
}
