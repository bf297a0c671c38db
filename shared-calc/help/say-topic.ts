import { actNames } from '#shared-calc/words/act-names.ts';
import { plainHelp } from './help-text.ts';
import type { MainAct } from './place-help.ts';
import { keyGroups, type KeyGroup } from './key-groups.ts';
import { topicOf, type Topic } from './topic.ts';

/** What a main act is called: its button, or how it is done. */
export function mainActName(act: MainAct): string {
  return 'act' in act ? actNames[act.act] : act.how;
}

export function sayMainAct(act: MainAct): string {
  return `${mainActName(act)}: ${act.does}.`;
}

const titleOf = (id: string) => topicOf(id)?.title ?? id;

/** A topic as lines of plain text, as the manual on the command line. */
export function sayTopic(topic: Topic): readonly string[] {
  if (topic.is === 'guide') return [topic.title, '', ...topic.says.map((says) => plainHelp(says, titleOf))];
  if (topic.is === 'word') return [`${topic.title}: ${plainHelp(topic.word.says, titleOf)}`];
  const { what, acts, words } = topic.help;
  const explained = words.flatMap((id) => {
    const word = topicOf(id);
    return word ? sayTopic(word) : [];
  });
  const keys = topic.id === 'keys' ? keyGroups.flatMap(keyLines) : [];
  return [topic.title, '', what, '', ...acts.map(sayMainAct), '', 'Words used there:', ...explained, ...keys];
}

function keyLines({ title, keys }: KeyGroup): readonly string[] {
  return ['', title, ...keys.map(([key, does]) => `  ${key}: ${does}`)];
}
