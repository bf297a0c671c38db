import { readChoice, type Option } from '#shared-calc/papers/read-choice.ts';
import { failed, ok } from '#shared-calc/result.ts';
import type { Field } from './field.ts';

export interface ChoiceParts<R> {
  readonly key: string;
  readonly title: string;
  readonly options: readonly Option[];
  readonly width?: number;
  readonly get: (record: R) => string | undefined;
  /** The record with the word put in; nothing where it may be left out. */
  readonly put: (record: R, word: string | undefined) => R;
  readonly mayBeEmpty?: boolean;
}

/** One of some words. */
export function choiceField<R>({
  key,
  title,
  options,
  width = 8,
  get,
  put,
  mayBeEmpty = false,
}: ChoiceParts<R>): Field<R> {
  const labelOf = (record: R) => {
    const word = get(record);
    return options.find(({ value }) => value === word)?.label ?? word ?? '';
  };
  return {
    key,
    title,
    unit: '',
    look: 'words',
    width,
    options: options.map(({ label }) => label),
    show: labelOf,
    entry: labelOf,
    read: (text, record) => {
      if (mayBeEmpty && text.trim() === '') return ok(put(record, undefined));
      const read = readChoice(text, title, options);
      return read.ok ? ok(put(record, read.value)) : failed(read.fault);
    },
  };
}

/** Words of a closed set as options, each shown as it is kept. */
export function plainOptions(words: readonly string[]): readonly Option[] {
  return words.map((word) => ({ value: word, label: word }));
}
