import { describe, expect, test } from 'vitest';
import { plainDisplay, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { editField } from '#shared-calc/records/edit-field.ts';
import { entryOfField, showField } from '#shared-calc/records/field-text.ts';
import { fieldOf } from '#shared-calc/fields/record-fields.ts';
import { fieldAsTyped, typedIn } from '#shared-calc/records/typed-figure.ts';
import type { Tank } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();
const workshop = workshopOf(records);
const us: Display = { ...plainDisplay, units: 'us', fractions: true };
const inBook = (display: Display) => ({
  records,
  workshop: { ...workshop, decimalComma: display.decimalComma ?? false },
  display,
});

function typed(text: string, display: Display, key = 'insideLengthMm'): Tank {
  const record = records.tank.get('T07');
  if (!record) throw new Error('no T07');
  const edited = editField({ kind: 'tank', record, key, text }, inBook(display));
  if (!edited.ok) throw new Error(JSON.stringify(edited.fault));
  return edited.value;
}

/** The figure in its cell, and as an editor opens with it. */
function shown(tank: Tank, display: Display): string {
  const field = fieldOf('tank', 'insideLengthMm');
  if (!field) throw new Error('no field');
  const context = inBook(display);
  const kept = fieldAsTyped(field, typedIn('tank', tank, 'insideLengthMm', tank.insideLengthMm), context);
  return (
    kept?.figure ??
    `${showField(field, tank.insideLengthMm, context)} = ${entryOfField(field, tank.insideLengthMm, context)}`
  );
}

describe('a figure of a record that was typed', () => {
  test.each([
    ['2 ft 6 in', plainDisplay, 762, '2 ft 6 in', '2 ft 6 in'],
    ['2\u2032 6\u2033', plainDisplay, 762, '2\u2032 6\u2033', '2\u2032 6\u2033'],
    ['23 1/2', us, 596.9, '23 1/2 in', '23 1/2'],
    ['23.4 in', us, 594.36, '23.4 in', '23.4'],
    ['600 mm', us, 600, '600 = 600', '600 mm'],
    ['600', plainDisplay, 600, '600 = 600', '23 5/8 = 23.6220472440945'],
    ['23,5 in', { ...plainDisplay, decimalComma: true }, 596.9, '23.5 in', '23.5'],
  ])('%s stands as it was typed, in either workshop', (text, display, mm, ...words) => {
    const tank = typed(text, display);

    expect([tank.insideLengthMm, shown(tank, plainDisplay), shown(tank, us)]).toEqual([mm, ...words]);
  });

  test('a decimal comma stands where the workshop writes one', () => {
    const comma = { ...plainDisplay, decimalComma: true };
    expect([typed('23,5 in', comma).typed, shown(typed('23,5 in', comma), comma)]).toEqual([
      { insideLengthMm: '23.5 in' },
      '23,5 in',
    ]);
  });

  test('another figure, from whatever hand, makes the text void', () => {
    const tank = typed('2 ft 6 in', plainDisplay);

    expect([shown({ ...tank, insideLengthMm: 700 }, plainDisplay), typed('700', plainDisplay).typed]).toEqual([
      '700 = 700',
      undefined,
    ]);
  });
});
