import { failed, ok } from '#shared-calc/result.ts';
import type { Field, KeyOf } from './field.ts';

export interface WordsParts {
  readonly title: string;
  readonly width?: number;
  /** Refused where empty. */
  readonly needed?: boolean;
}

/** Plain words, on one line. */
export function wordsField<R>(key: KeyOf<R, string>, { title, width = 12, needed = false }: WordsParts): Field<R> {
  const wordsOf = (record: R) => {
    const words: unknown = record[key];
    return typeof words === 'string' ? words : '';
  };
  return {
    key,
    title,
    unit: '',
    look: 'words',
    width,
    show: wordsOf,
    entry: wordsOf,
    read: (text, record) => {
      const words = text.replaceAll(/\s*\n\s*/g, ' ').trim();
      if (needed && words === '') return failed(`${title} needs a word.`);
      return ok({ ...record, [key]: words });
    },
  };
}
