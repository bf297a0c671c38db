import { SettledField, Fields } from '#renderer/kit/field.tsx';
import { entryOf, type LineFields } from './put-fields.ts';

/** The limits of a line's figure, in its own unit; a figure outside them is flagged as out of range. */
export function BoundFields({ line, put }: LineFields) {
  if (line.unit === 'choice' || line.unit === 'yes_no') return null;
  const settle = (key: 'low' | 'high') => (text: string) => {
    const bound = text.trim() === '' ? undefined : Number(text.trim().replace(',', '.'));
    return Number.isNaN(bound) ? 'Write a plain number, or nothing.' : put({ [key]: bound });
  };
  return (
    <Fields>
      <SettledField {...entryOf('low')} unit={line.unit} figure text={String(line.low ?? '')} settle={settle('low')} />
      <SettledField
        {...entryOf('high')}
        unit={line.unit}
        figure
        text={String(line.high ?? '')}
        settle={settle('high')}
      />
    </Fields>
  );
}
