import type { RowFault } from '#shared-calc/acts/import-list.ts';
import { didYouMean } from '#shared-calc/rule/did-you-mean.ts';
import { sayByKind, type Sayings } from './say-by-kind.ts';
import { sayFieldFault } from './say-field-fault.ts';

const sayings: Sayings<RowFault> = {
  'heading-lacks': ({ names }) => `The heading lacks ${names.join(', ')}.`,
  'row-length': ({ has, wants }) => `Has ${has} fields; the heading has ${wants}.`,
  'strange-heading': ({ heading, known }) =>
    `The heading "${heading}" says nothing here.${didYouMean(heading, known) || ` Known are ${known.join(', ')}.`}`,
  'no-rows': ({ many }) => `The file holds no ${many}.`,
  twice: ({ called }) => `${called} stands in the list twice.`,
  'not-filled-in': ({ heading, code }) =>
    code === undefined ? `The ${heading} is empty.` : `${code}: the ${heading} is empty.`,
  'bad-field': ({ code, fault }) => `${code}: ${sayFieldFault(fault)}`,
  'unknown-goods': ({ code, known }) =>
    `Nothing called ${code} in the material book or the tank book.${didYouMean(code, known)}`,
  'unit-of-goods': ({ code, unit, own }) => `${code} is sold in ${own}; "${unit}" does not fit.`,
  'no-such-pack': ({ code, amount, unit, packs }) =>
    `${code} has no pack of ${amount} ${unit}. Its packs: ${packs.map((pack) => `${pack} ${unit}`).join(', ') || 'none'}.`,
};

export function sayRowFault(fault: RowFault): string {
  return sayByKind(sayings, fault);
}
