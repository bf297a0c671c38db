import { contextNow, type BookApi } from '#renderer/books/book-api.ts';
import { SettledField, Fields } from '#renderer/kit/field.tsx';
import { decimalText } from '#shared-calc/quantity/read-number.ts';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';
import { entryOf, type LineFields } from './put-fields.ts';

interface BoundParts extends LineFields {
  readonly book: BookApi;
}

/** The limits of a line's figure, in its own unit; a figure outside them is flagged as out of range. */
export function BoundFields({ line, put, book }: BoundParts) {
  if (line.unit === 'choice' || line.unit === 'yes_no') return null;
  const { decimalComma } = contextNow(book).workshop;
  const settle = (key: 'low' | 'high') => (text: string) => {
    const bound = said(readMeasure(text, { name: '', stored: line.unit, mayBeEmpty: true }, { decimalComma }));
    return bound.ok ? put({ [key]: bound.value ?? null }) : bound.fault;
  };
  const text = (bound: number | undefined) => decimalText(String(bound ?? ''), decimalComma);
  return (
    <Fields>
      <SettledField {...entryOf('low')} unit={line.unit} figure text={text(line.low)} settle={settle('low')} />
      <SettledField {...entryOf('high')} unit={line.unit} figure text={text(line.high)} settle={settle('high')} />
    </Fields>
  );
}
