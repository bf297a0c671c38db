import { describe, expect, test } from 'vitest';
import { editField } from '#shared-calc/records/edit-field.ts';
import { fieldOf } from '#shared-calc/fields/record-fields.ts';
import { sayFieldFault } from '#shared-calc/words/say-field-fault.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { figureGroups, withChoice, withOpenDay, withUnitShown } from '#renderer/places/workshop/workshop-fields.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { demoDay, demoRecords } from '#tests/renderer/demo-records.ts';

const records = demoRecords();
const workshop = workshopOf(records);
const context = derive(records, demoDay);
const write = (key: string, text: string) => {
  const to = editField({ kind: 'workshop', record: workshop, key, text }, context);
  return to.ok ? to : failed(sayFieldFault(to.fault));
};

describe('figureGroups', () => {
  test('every group of the page holds fields of the workshop', () => {
    const keys = figureGroups.flatMap((group) => group.keys);
    expect(keys.filter((key) => fieldOf('workshop', key) === undefined)).toEqual([]);
    expect(new Set(keys).size).toBe(19);
  });
});

describe('a figure of the workshop', () => {
  test('figures are read in the unit of the house', () => {
    expect([write('altitudeM', '2000 ft'), write('pressureKpa', '15 psi'), write('depositShare', '50')]).toEqual([
      ok({ ...workshop, altitudeM: 609.6, typed: { altitudeM: '2000 ft' } }),
      ok({ ...workshop, pressureKpa: 103.4213593975, typed: { pressureKpa: '15 psi' } }),
      ok({ ...workshop, depositShare: 0.5 }),
    ]);
  });

  test('a deposit goes in steps of a coin at least, a price may go without', () => {
    expect([write('depositStepCoins', '0'), write('priceStepCoins', '0')]).toEqual([
      failed('Deposit in steps of is one coin or more.'),
      ok({ ...workshop, priceStepCoins: 0 }),
    ]);
  });

  test('what clients pay to run a tank may be empty, and has parts of a coin', () => {
    expect([write('electricityPerKwh', '0.315'), write('waterPerL', ' '), write('waterPerL', '-1')]).toEqual([
      ok({ ...workshop, electricityPerKwh: 0.315 }),
      ok(workshop),
      failed('Water is 0 or more; -1 is less.'),
    ]);
  });

  test('nobody gives the whole price away', () => {
    expect(write('discountShare', '100 %')).toEqual(failed('Discount is 95 % at most; 100 % is more.'));
  });
});

describe('the currency', () => {
  test('takes a code of the world or a short word', () => {
    expect([write('currency', 'EUR'), write('currency', 'euro')]).toEqual([
      ok({ ...workshop, currency: 'EUR' }),
      failed('A currency is one to three letters, such as EUR or cr.'),
    ]);
  });
});

describe('withUnitShown', () => {
  test('a unit chosen is taken back by an empty one', () => {
    const inches = withUnitShown(workshop, 'length', 'in');
    expect([inches.unitsShown, withUnitShown(inches, 'length', '').unitsShown]).toEqual([{ length: 'in' }, {}]);
  });
});

describe('withChoice', () => {
  test('with US units come the dates, the paper and the week of the US, unless others were chosen', () => {
    const us = withChoice(withChoice(workshop, 'paper', 'A4'), 'units', 'us');
    expect(us).toMatchObject({ units: 'us', dateOrder: 'mdy', weekStart: 'Sunday', paper: 'A4' });
    expect(withChoice(us, 'units', 'metric')).toMatchObject({ units: 'metric', dateOrder: 'mdy' });
  });
});

describe('withOpenDay', () => {
  test('the workshop is open on one day at least', () => {
    const monday = { ...workshop, openWeekdays: [1] };
    expect([withOpenDay(monday, 6, true)?.openWeekdays, withOpenDay(monday, 1, false)]).toEqual([[1, 6], undefined]);
  });
});
