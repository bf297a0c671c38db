import { readYesNo } from '#shared-calc/papers/read-yes-no.ts';
import { failed, ok } from '#shared-calc/result.ts';
import type { Field, KeyOf } from './field.ts';

/** Yes or no. */
export function yesNoField<R>(key: KeyOf<R, boolean>, title: string, width = 4.5): Field<R> {
  const wordOf = (record: R) => (record[key] === true ? 'yes' : 'no');
  return {
    key,
    title,
    unit: '',
    look: 'words',
    width,
    options: ['yes', 'no'],
    show: wordOf,
    entry: wordOf,
    read: (text, record) => {
      const read = readYesNo(text);
      return read.ok ? ok({ ...record, [key]: read.value }) : failed(`${title}: ${read.fault}`);
    },
  };
}
