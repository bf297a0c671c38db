import { describe, expect, test } from 'vitest';
import { derive } from '#shared-calc/derive/derived.ts';
import type { Field } from '#shared-calc/fields/field.ts';
import { fieldOf, fieldsOf } from '#shared-calc/fields/record-fields.ts';
import { findUnit } from '#shared-calc/quantity/unit.ts';
import { entryOfField, parseField, showField, unitOfField, valueOf } from '#shared-calc/records/field-text.ts';
import { allKinds } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { sameData } from '#shared-calc/records/same-data.ts';
import { sayEntryFault } from '#shared-calc/words/say-entry-fault.ts';
import { demoDay, demoRecords } from '#tests/renderer/demo-records.ts';

const records = demoRecords();
const context = derive(records, demoDay);

/** Currency, decimal sign and units that differ from the demo's: what is shown must still parse. */
const other = derive(
  {
    ...records,
    workshop: new Map([
      [
        'workshop',
        {
          ...workshopOf(records),
          decimalComma: true,
          unitsShown: { length: 'in', area: 'ft2', volume: 'gal', temperature: 'degF' },
        },
      ],
    ]),
  },
  demoDay,
);

const everyRecord = allKinds.flatMap((kind) => [...records[kind].values()].map((record) => ({ kind, record })));
const isTyped = ({ kind, unit = 'number' }: Field) => kind !== 'data' && findUnit(unit) !== undefined;

describe('parseField', () => {
  test.each([
    ['as the demo shows it', context],
    ['in inches, gallons and degF, with a decimal comma', other],
  ])('every field of every record reads what would be typed for it, %s', (_, at) => {
    const lost = everyRecord.flatMap(({ kind, record }) =>
      fieldsOf(kind).flatMap(([key, field]) => {
        const value = valueOf(record, key);
        if (!isTyped(field) || (typeof value === 'string' && value !== value.trim())) return [];
        const read = parseField(field, entryOfField(field, value, at), at);
        const back = read.ok ? read.value : sayEntryFault(read.fault);
        return sameData(back, value)
          ? []
          : [`${kind} ${record.id} ${key}: ${String(value)} comes back as ${String(back)}`];
      }),
    );
    expect(everyRecord.length).toBeGreaterThan(300);
    expect(lost).toEqual([]);
  });
});

describe('what a record is called by', () => {
  test.each([
    ['material', 'label'],
    ['plant', 'name'],
    ['cultureKind', 'label'],
    ['animalKind', 'label'],
    ['rate', 'label'],
    ['margin', 'label'],
    ['taxClass', 'label'],
    ['supplier', 'name'],
  ] as const)('the %s has a %s that may not be left empty', (kind, key) => {
    const field = fieldOf(kind, key);
    const read = (text: string) => field && parseField(field, text, context);
    expect(read('  ')).toMatchObject({ ok: false, fault: { kind: 'empty', wants: 'word' } });
    expect(read(' One word ')).toEqual({ ok: true, value: 'One word' });
  });
});

describe('showField', () => {
  test.each([
    ['plant', 'leastFloorM2', 0.267, '0.267 m2', '2,87 ft2'],
    ['tank', 'insideLengthMm', 1200, '1200 mm', '47,24 in'],
    ['cultureKind', 'ratePerDay', 0.025, '2.5 %/d', '2,5 %/d'],
    ['cultureKind', 'lowestC', 18, '18 degC', '64,4 degF'],
    ['cultureKind', 'harvestEveryDays', 14, '14 d', '14 d'],
    ['workshop', 'electricityPerKwh', 0.315, '0.315 money/kWh', '0,315 money/kWh'],
    ['workshop', 'altitudeM', 609.6, '609.6 m', '2.000 ft'],
    ['supplier', 'minimumCoins', 128_888, '1,288.88 money', '1.288,88 money'],
    ['supplier', 'deliveryWeekdays', undefined, 'any open day ', 'any open day '],
    ['supplier', 'deliveryWeekdays', [2, 3, 4], 'Tue-Thu ', 'Tue-Thu '],
    ['material', 'sale', 'cut', 'cut to size ', 'cut to size '],
    ['tank', 'supplier', 'S-greavel', 'Greavel Pane Cutters ', 'Greavel Pane Cutters '],
    ['tank', 'glassMm', undefined, ' mm', ' in'],
  ] as const)('%s %s %o is %s, elsewhere %s', (kind, key, value, ...said) => {
    const field = fieldOf(kind, key);
    const say = (at: typeof context) => field && `${showField(field, value, at)} ${unitOfField(field, at.display)}`;
    expect([say(context), say(other)]).toEqual(said);
  });
});
