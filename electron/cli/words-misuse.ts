import type { Arguments } from './read-arguments.ts';

/** What is wrong with the words of a command that wants these, and may have some more. */
export function wordsMisuse({ words }: Arguments, wanted: readonly string[], more = 0): string | undefined {
  const missing = wanted[words.length];
  if (missing !== undefined) return `Say the ${missing}.`;
  const spare = words[wanted.length + more];
  return spare === undefined ? undefined : `What is ${spare} for?`;
}
