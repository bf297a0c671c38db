import { mainActName, sayTopic } from '#shared-calc/help/say-topic.ts';
import { topicOf, topics, type Topic } from '#shared-calc/help/topic.ts';
import { didYouMean } from '#shared-calc/rule/did-you-mean.ts';
import { tradeFunctions } from '#shared-calc/trade/all-functions.ts';
import { functionInFull } from './commands/functions.ts';
import type { Command } from './command.ts';
import { optionWords } from './option-words.ts';
import { wrongUse, type Outcome } from './outcome.ts';
import { textTable } from './text-table.ts';

type Commands = ReadonlyMap<string, Command>;

/** `help` alone lists commands and topics; `help WORD` tells of a command, else of a topic, else of a function. */
export function answerHelp(words: readonly string[], commands: Commands): Outcome {
  const wanted = words.join(' ');
  if (wanted === '') return listAll(commands);
  const family = [...commands.values()].filter(({ name }) => name === wanted || name.startsWith(`${wanted} `));
  const topic = findTopic(wanted);
  if (family.length > 0) return tellCommands(family, topic);
  if (topic) return { is: 'answer', json: { topic: topicJson(topic) }, table: () => sayTopic(topic).join('\n') };
  const found = tradeFunctions.find(({ name, title }) => isCalled(wanted, name, title));
  if (found) {
    const { name, title, help } = found;
    return { is: 'answer', json: { function: { name, title, help } }, table: () => functionInFull(found) };
  }
  const known = [...commands.keys(), ...topics.flatMap(({ id, title }) => [id, title.toLowerCase()])];
  return wrongUse(`No command or topic ${wanted}.${didYouMean(wanted, known)} help lists them.`);
}

function isCalled(wanted: string, ...names: readonly string[]): boolean {
  return names.some((name) => name.toLowerCase() === wanted.toLowerCase());
}

function findTopic(wanted: string): Topic | undefined {
  return topicOf(wanted) ?? topics.find(({ id, title }) => isCalled(wanted, id.replaceAll('-', ' '), title));
}

function listAll(commands: Commands): Outcome {
  const usages = [...commands.values()].map(({ usage }) => usage);
  return {
    is: 'answer',
    json: {
      commands: [...commands.values()].map(({ name, usage }) => ({ name, usage })),
      topics: topics.map(({ id, is, title }) => ({ id, is, title })),
    },
    table: () =>
      [
        ...usages,
        'help [COMMAND or TOPIC]: a command with its options, a place or a word explained, a function of the function book',
        '--version: the version of the program',
        '--json on any of them gives one JSON value.',
        '',
        ...(['guide', 'place', 'word'] as const).map(
          (is) =>
            `${headings[is]}: ${topics
              .filter((topic) => topic.is === is)
              .map(({ id }) => id)
              .join(', ')}.`,
        ),
      ].join('\n'),
  };
}

const headings = { guide: 'Guides', place: 'Places', word: 'Words' } as const;

function tellCommands(family: readonly Command[], topic: Topic | undefined): Outcome {
  const parts = [...family.map(commandLines), ...(topic ? [sayTopic(topic)] : [])];
  return {
    is: 'answer',
    json: { commands: family.map(commandJson), ...(topic && { topic: topicJson(topic) }) },
    table: () => parts.map((lines) => lines.join('\n')).join('\n\n'),
  };
}

/** A command with its options, each with a value as it is typed. */
export function commandLines(command: Command): readonly string[] {
  const rows = optionsOf(command).map(({ option, as, says }) => [`  ${option}${as === '' ? '' : ` ${as}`}`, says]);
  // The head row of the table, empty here, and its rule are left out.
  return [command.usage, ...textTable(['', ''], rows).split('\n').slice(2)];
}

function optionsOf({ name, options }: Command) {
  return Object.keys({ ...options, json: 'flag' }).map((option) => {
    const { as = '', says = '' } = optionWords(name, option) ?? {};
    return { option: `--${option}`, as, says };
  });
}

function commandJson(command: Command) {
  return { name: command.name, usage: command.usage, options: optionsOf(command) };
}

function topicJson(topic: Topic) {
  const { id, is, title } = topic;
  const acts = topic.is === 'place' ? topic.help.acts.map((act) => ({ act: mainActName(act), does: act.does })) : [];
  return { id, is, title, says: sayTopic(topic), acts };
}
