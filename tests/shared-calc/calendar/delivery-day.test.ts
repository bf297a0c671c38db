import { describe, expect, test } from 'vitest';
import { nextDeliveryDay, previousDeliveryDay } from '#shared-calc/calendar/delivery-day.ts';

const tuesdayToThursday = [2, 3, 4];
const summer = { openWeekdays: [1, 2, 3, 4, 5], closed: [{ from: '2027-08-02', to: '2027-08-06' }] };

describe('nextDeliveryDay', () => {
  test.each([
    ['2027-07-23', '2027-07-27'],
    ['2027-07-27', '2027-07-27'],
    ['2027-07-30', '2027-08-10'],
  ])('plants ready on %s come on %s', (ready, comes) => {
    expect(nextDeliveryDay(ready, tuesdayToThursday, summer)).toBe(comes);
  });

  test('without weekdays any open day will do', () => {
    expect(nextDeliveryDay('2027-07-31', [], summer)).toBe('2027-08-09');
  });

  test('who comes on Sundays only never finds us open', () => {
    expect(nextDeliveryDay('2027-07-23', [7], summer)).toBeUndefined();
  });
});

describe('previousDeliveryDay', () => {
  test.each([
    ['2027-03-08', '2027-03-04'],
    ['2027-03-04', '2027-03-04'],
    ['2027-08-09', '2027-07-29'],
  ])('plants wanted by %s come on %s', (wanted, comes) => {
    expect(previousDeliveryDay(wanted, tuesdayToThursday, summer)).toBe(comes);
  });

  test('without weekdays any open day will do', () => {
    expect(previousDeliveryDay('2027-08-08', [], summer)).toBe('2027-07-30');
  });

  test('who comes on Sundays only never finds us open', () => {
    expect(previousDeliveryDay('2027-07-23', [7], summer)).toBeUndefined();
  });
});
