import { programVersion } from '#electron/service/program-version.ts';
import { answerHelp, commandLines } from './answer-help.ts';
import { commands, commandNames } from './commands.ts';
import { exitCodes, type Outcome } from './outcome.ts';
import { readArguments, type Arguments } from './read-arguments.ts';
import { escapedSigns, shownSigns } from './shown-signs.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';

/** Where a command's output and its faults are written. */
export interface Streams {
  readonly stdout: { readonly write: (text: string) => unknown };
  readonly stderr: { readonly write: (text: string) => unknown };
}

/**
 * Runs one command line and returns its exit code: 0 done, 1 refused, 2 wrong use, 3 the book cannot be opened;
 * `undefined` if it keeps running.
 */
export async function main(argv: readonly string[], streams: Streams = process): Promise<number | undefined> {
  const asked = argv[0] ?? '';
  if (['help', '--help', '-h'].includes(asked)) return help(argv.slice(1), streams);
  if (asked === '--version') return version(argv.slice(1), streams);
  const found = findCommand(argv);
  if (!found) return endWithoutCommand(argv, streams);
  const { command, rest } = found;
  const given = readArguments(rest, { ...command.options, json: 'flag', help: 'flag' });
  if (!given.ok) return end({ is: 'wrong use', says: given.fault }, asksJson(rest), streams);
  if (given.value.flag('help')) {
    streams.stdout.write(`${commandLines(command).join('\n')}\n`);
    return 0;
  }
  const misuse = command.misuse?.(given.value);
  const outcome: Outcome = misuse === undefined ? await command.run(given.value) : { is: 'wrong use', says: misuse };
  return end(outcome, given.value, streams);
}

function help(rest: readonly string[], streams: Streams): number | undefined {
  const given = readArguments(rest, { json: 'flag', help: 'flag' });
  if (!given.ok) return end({ is: 'wrong use', says: given.fault }, asksJson(rest), streams);
  return end(answerHelp(given.value.words, commands), given.value, streams);
}

function version(rest: readonly string[], streams: Streams): number | undefined {
  const given = readArguments(rest, { json: 'flag' });
  if (!given.ok) return end({ is: 'wrong use', says: given.fault }, asksJson(rest), streams);
  const now = programVersion();
  return end({ is: 'answer', json: { version: now }, table: () => now }, given.value, streams);
}

function findCommand(argv: readonly string[]) {
  for (const words of [2, 1]) {
    const command = commands.get(argv.slice(0, words).join(' '));
    if (command && argv.length >= words) return { command, rest: argv.slice(words) };
  }
  return undefined;
}

function endWithoutCommand(argv: readonly string[], streams: Streams): number | undefined {
  const word = argv[0];
  const says = word === undefined ? `Say what to do: ${commandNames.join(', ')}.` : unknownCommand(word, argv[1]);
  return end({ is: 'wrong use', says }, asksJson(argv), streams);
}

/** `book chek` is near `book check`; `book` alone means all commands that start with it. */
function unknownCommand(word: string, next = ''): string {
  const family = commandNames.filter((name) => name.startsWith(`${word} `));
  const near = nearestName(`${word} ${next}`, family) ?? nearestName(word, commandNames);
  if (near !== undefined) return `No command ${family.length > 0 ? `${word} ${next}` : word}. Did you mean ${near}?`;
  if (family.length > 0) return `Say which: ${family.join(', ')}.`;
  return `No command ${word}. There are: ${commandNames.join(', ')}.`;
}

type Flags = Pick<Arguments, 'flag'>;

function end(outcome: Outcome, given: Flags | undefined, { stdout, stderr }: Streams): number | undefined {
  for (const says of saidBeside(outcome)) stderr.write(`${shownSigns(says)}\n`);
  if (outcome.is === 'answer') stdout.write(print(outcome, given));
  else if (outcome.is !== 'goes on' && given?.flag('json')) stdout.write(jsonText(faultJson(outcome)));
  return exitCodes[outcome.is];
}

/** For a command line that was not understood as a whole. */
function asksJson(argv: readonly string[]): Flags {
  return { flag: (name) => name === 'json' && argv.includes('--json') };
}

/** What was refused, for a program: its own data, or its sentences with the kind of refusal. */
function faultJson(outcome: Exclude<Outcome, { readonly is: 'answer' | 'goes on' }>): unknown {
  if (outcome.is === 'refused') return outcome.json ?? { fault: { kind: outcome.is, says: outcome.says.join('\n') } };
  return { fault: { kind: outcome.is, says: outcome.says } };
}

function jsonText(value: unknown): string {
  return `${escapedSigns(JSON.stringify(value))}\n`;
}

/** Lines for standard error, one sentence each. */
function saidBeside(outcome: Outcome): readonly string[] {
  if (outcome.is === 'goes on') return [];
  if (outcome.is === 'answer') return outcome.notices ?? [];
  return outcome.is === 'refused' ? outcome.says : [outcome.says];
}

function print(outcome: Outcome & { readonly is: 'answer' }, given: Flags | undefined): string {
  if (given?.flag('json')) return jsonText(outcome.json);
  if (given?.flag('csv') && outcome.csv) return (given.flag('bom') ? '\ufeff' : '') + shownSigns(outcome.csv());
  return `${shownSigns(outcome.table())}\n`;
}
