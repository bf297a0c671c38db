/*
 * Days as whole numbers, 0 for 1970-01-01, by the rules of the Gregorian calendar counted in its cycle of 400 years;
 * a year is taken to begin in March, so that the leap day is its last. The standard's own plain dates cost fifty times as
 * much, and a plan asks for hundreds; tests hold the two together.
 */

const CYCLE_YEARS = 400;
const CYCLE_DAYS = 146_097;
/** From 1 March of the year 0 to 1 January 1970. */
const TO_EPOCH = 719_468;

/** The number of a day written as `2027-07-19`, or with a sign and six digits before the year 0 and past 9999. */
export function dayNumberOf(day: string): number {
  const date = Number(day.slice(-2));
  const month = Number(day.slice(-5, -3));
  const year = Number(day.slice(0, -6)) - (month <= 2 ? 1 : 0);
  const cycle = Math.floor(year / CYCLE_YEARS);
  const ofCycle = year - cycle * CYCLE_YEARS;
  const dayOfYear = daysBeforeMonth((month + 9) % 12) + date - 1;
  return cycle * CYCLE_DAYS + daysBeforeYear(ofCycle) + dayOfYear - TO_EPOCH;
}

/** The day of a number, written as `dayNumberOf` reads it. */
export function dayOfNumber(number: number): string {
  const days = number + TO_EPOCH;
  const cycle = Math.floor(days / CYCLE_DAYS);
  const ofCycle = days - cycle * CYCLE_DAYS;
  const leaps = Math.floor(ofCycle / 1460) - Math.floor(ofCycle / 36_524) + Math.floor(ofCycle / 146_096);
  const yearOfCycle = Math.floor((ofCycle - leaps) / 365);
  const dayOfYear = ofCycle - daysBeforeYear(yearOfCycle);
  const monthFromMarch = Math.floor((5 * dayOfYear + 2) / 153);
  const date = dayOfYear - daysBeforeMonth(monthFromMarch) + 1;
  const month = monthFromMarch < 10 ? monthFromMarch + 3 : monthFromMarch - 9;
  const year = cycle * CYCLE_YEARS + yearOfCycle + (month <= 2 ? 1 : 0);
  return `${yearText(year)}-${twoDigits(month)}-${twoDigits(date)}`;
}

function daysBeforeYear(year: number): number {
  return year * 365 + Math.floor(year / 4) - Math.floor(year / 100);
}

/** 0 March to 11 February: 31, 30, 31, 30, 31 over and over. */
function daysBeforeMonth(monthFromMarch: number): number {
  return Math.floor((153 * monthFromMarch + 2) / 5);
}

function yearText(year: number): string {
  if (year >= 0 && year <= 9999) return String(year).padStart(4, '0');
  return (year < 0 ? '-' : '+') + String(Math.abs(year)).padStart(6, '0');
}

function twoDigits(figure: number): string {
  return String(figure).padStart(2, '0');
}
