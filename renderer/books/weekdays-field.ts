import { readWeekdays, writeWeekdays } from '#shared-calc/papers/read-weekdays.ts';
import type { Supplier } from '#shared-calc/records/records.ts';
import { ok } from '#shared-calc/result.ts';
import type { Field } from './field.ts';

/** Days of the week a supplier comes; none written is any open day. */
export const weekdaysField: Field<Supplier> = {
  key: 'deliveryWeekdays',
  title: 'Comes on',
  unit: '',
  look: 'words',
  width: 8,
  show: ({ deliveryWeekdays: days }) => (days === undefined ? 'any open day' : writeWeekdays(days)),
  entry: ({ deliveryWeekdays: days }) => (days === undefined ? '' : writeWeekdays(days)),
  read: (text, supplier) => {
    const read = readWeekdays(text === 'any open day' ? '' : text);
    if (!read.ok) return read;
    return ok({ ...supplier, deliveryWeekdays: read.value.length === 0 ? undefined : [...read.value] });
  },
};
