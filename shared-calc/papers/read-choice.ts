import { failed, ok, type Result } from '#shared-calc/result.ts';
import { didYouMean } from '#shared-calc/rule/did-you-mean.ts';

/** What may be chosen: the word kept, and the word shown where it is another. */
export interface Option {
  readonly value: string;
  readonly label: string;
}

/**
 * Reads one of some words, in whatever letters: the word shown or the word kept, or a beginning that only one of
 * them has. Refuses any other with the nearest, or with all of a short list.
 */
export function readChoice(text: string, name: string, options: readonly Option[]): Result<string, string> {
  const word = text.trim().toLowerCase();
  const whole = options.find(({ value, label }) => [value.toLowerCase(), label.toLowerCase()].includes(word));
  if (whole) return ok(whole.value);
  const begun = word === '' ? [] : options.filter(({ label }) => label.toLowerCase().startsWith(word));
  const [only] = begun;
  if (only && begun.length === 1) return ok(only.value);
  if (begun.length > 1) return failed(`${name}: "${text.trim()}" may be ${sayAll(begun)}.`);
  const near = didYouMean(
    text.trim(),
    options.map(({ label }) => label),
  );
  const cure = near === '' && options.length <= 8 ? ` It is one of ${sayAll(options)}.` : near;
  return failed(word === '' ? `${name} needs a word.${cure}` : `${name}: nothing called "${text.trim()}".${cure}`);
}

function sayAll(options: readonly Option[]): string {
  return options.map(({ label }) => label).join(', ');
}
