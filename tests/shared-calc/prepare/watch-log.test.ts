import { describe, expect, test } from 'vitest';
import { readWatchLog } from '#shared-calc/prepare/watch-log.ts';

const twoReadings = [
  { hour: 0, degC: 22.5, humidity: 80 },
  { hour: 12, degC: 25, humidity: 91 },
];

describe('readWatchLog', () => {
  test.each([
    ['hours', '0 22.5 80\n12 25 91'],
    ['hours that do not begin at 0', '3\t22.5\t80\n15\t25\t91'],
    ['times of day, over midnight', 'time degC humidity\n18:00 22.5 °C 80 %\n06:00 25 °C 91 %'],
    ['Fahrenheit, where it is said', '0 72.5F 80\n12 77 °F 91'],
    ['days and times', '2027-04-08 18:00; 22,5; 80\n2027-04-09 06:00; 25; 91'],
    ['days and times as a logger writes them', '2027-04-08T18:00:00,22.5,80\n2027-04-09T06:00:00,25,91'],
  ])('reads %s', (_how, text) => {
    expect(readWatchLog(text)).toEqual({ ok: true, value: twoReadings });
  });

  test.each([
    ['0 22.5 80', 1, 'A watch needs two readings or more: time, degC and humidity.'],
    ['0 22.5 80\n5 25', 2, '"5 25" is not time, degC and humidity, as 14:30 24.5 85.'],
    ['0 22.5 80\n5 25 120', 2, 'Humidity runs from 0 to 100 %, not 120.'],
    ['0 22.5 80\n0 25 91', 2, 'Times must rise from reading to reading.'],
    ['0 22.5 80\n06:00 25 91', 2, 'Times are hours before and time of day here.'],
    [
      '2027-02-30 06:00 22.5 80\n5 25 91',
      1,
      '"2027-02-30 06:00 22.5 80" is not time, degC and humidity, as 14:30 24.5 85.',
    ],
  ])('%j is refused at row %d', (text, row, says) => {
    const read = readWatchLog(text);
    expect(read.ok ? [] : read.fault).toContainEqual({ row, says });
  });
});
