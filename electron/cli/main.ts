import { commands, commandNames } from './commands.ts';
import { exitCodes, type Outcome } from './outcome.ts';
import { readArguments, type Arguments } from './read-arguments.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';

/** Runs one command line and answers its exit code: 0 done, 1 refused, 2 wrong use, 3 the book cannot be opened. */
export async function main(argv: readonly string[]): Promise<number> {
  const found = findCommand(argv);
  if (!found) return end(unknownCommand(argv), undefined);
  const given = readArguments(found.rest, { ...found.command.options, json: 'flag', help: 'flag' });
  if (!given.ok) return end({ is: 'wrong use', says: given.fault }, undefined);
  if (given.value.flag('help')) {
    process.stdout.write(`${found.command.usage}\n`);
    return 0;
  }
  return end(await found.command.run(given.value), given.value);
}

function findCommand(argv: readonly string[]) {
  for (const words of [2, 1]) {
    const command = commands.get(argv.slice(0, words).join(' '));
    if (command && argv.length >= words) return { command, rest: argv.slice(words) };
  }
  return undefined;
}

function unknownCommand(argv: readonly string[]): Outcome {
  const word = argv[0];
  if (word === undefined || word === '--help') {
    return { is: 'wrong use', says: `Say what to do: ${commandNames.join(', ')}.` };
  }
  const near = nearestName(word, commandNames);
  return {
    is: 'wrong use',
    says: near === undefined ? `No command ${word}. There are: ${commandNames.join(', ')}.` : `No command ${word}. Did you mean ${near}?`,
  };
}

function end(outcome: Outcome, given: Arguments | undefined): number {
  if (outcome.is === 'answer') process.stdout.write(print(outcome, given));
  if (outcome.is === 'refused') {
    for (const says of outcome.says) process.stderr.write(`${says}\n`);
    if (given?.flag('json') && outcome.json !== undefined) process.stdout.write(`${JSON.stringify(outcome.json)}\n`);
  }
  if (outcome.is === 'wrong use' || outcome.is === 'no book') process.stderr.write(`${outcome.says}\n`);
  return exitCodes[outcome.is];
}

function print(outcome: Outcome & { readonly is: 'answer' }, given: Arguments | undefined): string {
  if (given?.flag('json')) return `${JSON.stringify(outcome.json)}\n`;
  if (given?.flag('csv') && outcome.csv) return (given.flag('bom') ? '\ufeff' : '') + outcome.csv();
  return `${outcome.table()}\n`;
}
