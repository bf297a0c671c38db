import type { Done } from '#shared-calc/records/records.ts';

export const sampleDone: Done = {
  id: 'D-0001',
  on: '2027-03-10',
  step: 'built',
  who: 'R1',
  job: 'J01',
  against: [{ what: 'deposit', why: 'No deposit of J01 is recorded.' }],
  note: 'Paid in cash on the day',
  name: 'Mara',
  minutes: 90,
  rateCoins: 3200,
  ends: false,
  size: 'J01-T07',
  tub: 'U1',
  order: 'O-0001',
  readings: { lowC: 21, lowHumidity: 0.75, deaths: 0, eating: true },
};
