import type { Command } from '#electron/cli/command.ts';
import { exitCodes } from '#electron/cli/outcome.ts';
import { readArguments } from '#electron/cli/read-arguments.ts';

/** Runs one command by itself: returns its JSON, or its exit code and message. */
export async function answerOf(command: Command, ...argv: readonly string[]): Promise<unknown> {
  const given = readArguments(argv, { ...command.options, json: 'flag' });
  if (!given.ok) return { code: exitCodes['wrong use'], says: [given.fault] };
  const misuse = command.misuse?.(given.value);
  if (misuse !== undefined) return { code: exitCodes['wrong use'], says: [misuse] };
  const outcome = await command.run(given.value);
  if (outcome.is === 'answer') return outcome.json;
  return { code: exitCodes[outcome.is], says: 'says' in outcome ? [outcome.says].flat() : [] };
}

/** The same as text. */
export async function tableOf(command: Command, ...argv: readonly string[]): Promise<string> {
  const given = readArguments(argv, command.options);
  const outcome = given.ok ? await command.run(given.value) : undefined;
  return outcome?.is === 'answer' ? outcome.table() : '';
}
