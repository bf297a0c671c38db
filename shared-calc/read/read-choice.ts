import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { EntryFault } from './entry-fault.ts';

/** One option: the stored word, and the shown word if it differs. */
export interface Option {
  readonly value: string;
  readonly label: string;
}

/** Words of a closed set as options, shown as stored. */
export function plainOptions(words: readonly string[]): readonly Option[] {
  return words.map((word) => ({ value: word, label: word }));
}

/**
 * Parses one of some words, ignoring case: the shown or the stored word, or a beginning that only one shown word has.
 */
export function readChoice(text: string, name: string, options: readonly Option[]): Result<string, EntryFault> {
  const word = text.trim();
  const small = word.toLowerCase();
  const whole =
    options.find(({ value, label }) => value === word || label === word) ??
    options.find(({ value, label }) => [value.toLowerCase(), label.toLowerCase()].includes(small));
  if (whole) return ok(whole.value);
  const begun = word === '' ? [] : options.filter(({ label }) => label.toLowerCase().startsWith(small));
  const [only] = begun;
  if (only && begun.length === 1) return ok(only.value);
  if (begun.length > 1) return failed({ kind: 'two-readings', name, text: word, readings: begun.map(labelOf) });
  return failed({ kind: 'unknown-word', name, text: word, options: options.map(labelOf) });
}

function labelOf({ label }: Option): string {
  return label;
}
