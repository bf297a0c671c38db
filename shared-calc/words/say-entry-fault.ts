import { kindOfUnit, sayKind } from '#shared-calc/quantity/kind.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import type { EntryFault } from '#shared-calc/read/entry-fault.ts';
import { failed, type Result } from '#shared-calc/result.ts';
import { didYouMean } from '#shared-calc/rule/did-you-mean.ts';
import { sayByKind, type Sayings } from './say-by-kind.ts';

const sayings: Sayings<EntryFault> = {
  empty: ({ name, wants }) => `${name} needs a ${wants}.`,
  'not-a-figure': ({ name, text }) => of(name, `"${text}" is not a figure.`),
  'unknown-unit': ({ name, unit }) => of(name, `there is no unit called ${unit}.`),
  'two-readings': ({ name, text, readings }) => of(name, `"${text}" may be ${sayEither(readings)}.`),
  'other-sign': ({ name, sign, like }) =>
    of(name, `${name === '' ? 'Here' : 'here'} the decimal sign is the ${sign}: ${like}.`),
  'other-kind': ({ name, text, unit }) =>
    `${name} is in ${unit}, a ${sayKind(kindOfUnit(unit))}; "${text}" does not fit.`,
  'not-whole': ({ name, value, unit }) => `${name} is a whole number; ${withUnit(value, unit)} is not.`,
  'too-low': ({ name, value, low, unit }) =>
    unit === 'coin'
      ? `${name} is one coin or more.`
      : `${name} is ${withUnit(low, unit)} or more; ${withUnit(value, unit)} is less.`,
  'too-high': ({ name, value, high, unit }) =>
    `${name} is ${withUnit(high, unit)} at most; ${withUnit(value, unit)} is more.`,
  'not-money': ({ name, text }) => of(name, `"${text}" is not an amount of money.`),
  'below-zero': ({ name, text }) => of(name, `"${text}" is below zero.`),
  'too-much-money': ({ name, text }) => of(name, `"${text}" is too large.`),
  'part-of-coin': ({ name, text }) => of(name, `"${text}" has a fraction of a coin.`),
  'not-a-day': ({ name, text, like = '2026-11-25' }) => of(name, `"${text}" is not a day; write it as ${like}.`),
  'no-such-day': ({ name, text }) => of(name, `there is no ${text} in the calendar.`),
  'unknown-word': ({ name, text, options }) =>
    text === ''
      ? `${name} needs a word.${cureOf(text, options)}`
      : of(name, `nothing called "${text}".${cureOf(text, options)}`),
  'other-form': ({ says }) => says,
  'not-a-weekday': ({ name, text }) =>
    of(name, `"${text}" is no day of the week; write Mon Tue Wed Thu Fri Sat Sun, or Mon-Fri.`),
  'neither-yes-nor-no': ({ name, text }) => of(name, `"${text}" is neither yes nor no.`),
};

/** What is wrong with a text that was typed, in one sentence. */
export function sayEntryFault(fault: EntryFault): string {
  return sayByKind(sayings, fault);
}

/** The result of parsing, with its fault in words. */
export function said<T>(read: Result<T, EntryFault>): Result<T, string> {
  return read.ok ? read : failed(sayEntryFault(read.fault));
}

/** If no word is near, all words are listed, up to this many. */
const tellAtMost = 8;

function cureOf(text: string, options: readonly string[]): string {
  const near = didYouMean(text, options);
  return near === '' && options.length > 0 && options.length <= tellAtMost
    ? ` It is one of ${options.join(', ')}.`
    : near;
}

function of(name: string, says: string): string {
  return name === '' ? says : `${name}: ${says}`;
}

function sayEither(readings: readonly string[]): string {
  return readings.length === 2 ? readings.join(' or ') : readings.join(', ');
}

function withUnit(value: number, unit: string): string {
  if (unit === 'share') return `${cleanNoise(value * 100)} %`;
  return ['each', 'number', 'coin'].includes(unit) ? `${value}` : `${value} ${unit}`;
}
