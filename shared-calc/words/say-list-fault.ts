import type { ListRowFault } from '#shared-calc/acts/place-list-rows.ts';
import type { ListFault } from '#shared-calc/acts/price-list.ts';
import type { ListColumn } from '#shared-calc/fields/price-list-map.ts';
import type { EntryFault } from '#shared-calc/read/entry-fault.ts';
import type { BytesFault } from '#shared-calc/read/text-encoding.ts';
import { didYouMean } from '#shared-calc/rule/did-you-mean.ts';
import { sayByKind, type Sayings } from './say-by-kind.ts';
import { sayEntryFault } from './say-entry-fault.ts';

/** What each column of a price list holds. */
export const columnWords: Readonly<Record<ListColumn, string>> = {
  article: 'article number',
  material: 'our code',
  label: 'words',
  pack: 'pack',
  unit: 'unit',
  price: 'price',
  from: 'from',
};

const listSayings: Sayings<ListFault | BytesFault> = {
  'empty-file': () => 'The file is empty.',
  'file-too-big': ({ mostMegabytes }) => `The file is over ${mostMegabytes} megabytes; that is no price list.`,
  'not-text': () => 'This is no text. Save the sheet as CSV and choose that.',
  'no-rows': () => 'The list has no rows under a heading.',
  'too-many-rows': ({ most }) => `The list has over ${most} rows. Split it.`,
  'no-heading': ({ lacks, headings }) =>
    `Say which heading is the ${lacks.map((column) => columnWords[column]).join(' and which the ')}. The list has ${quoted(headings)}.`,
  'no-such-heading': ({ column, heading, headings }) =>
    `No heading is "${heading}", which should be the ${columnWords[column]}.${didYouMean(heading, headings)} The list has ${quoted(headings)}.`,
  'heading-twice': ({ heading, columns }) =>
    `Two columns are headed "${heading}". Say which by its place: ${columns.join(' or ')}.`,
  'no-day': () => 'The list does not say from which day its prices hold. Say the day.',
};

/** Why a list cannot be read at all. */
export function sayListFault(fault: ListFault | BytesFault): string {
  return sayByKind(listSayings, fault);
}

const rowSayings: Sayings<Exclude<ListRowFault, EntryFault>> = {
  'row-length': ({ has, wants }) => `Has ${has} cells; the heading has ${wants}.`,
  'hidden-signs': ({ column }) => `The ${columnWords[column]} holds signs that are not shown.`,
  'cell-too-long': ({ column, most }) => `The ${columnWords[column]} is longer than ${most} letters.`,
  'pack-empty': () => 'Names no pack.',
  'pack-no-amount': ({ text }) => `"${text}" is no amount of a pack.`,
  'pack-unknown-unit': ({ text, unit }) =>
    `Pack "${text}": there is no unit called ${unit}. Say how much a pack holds.`,
  'pack-two-units': ({ text, other }) => `Pack "${text}" is in two units; leave ${other} out, or the other.`,
  'pack-number': ({ text, fault }) => `Pack "${text}": ${sayNumber(fault)}`,
  'pack-without-unit': ({ amount, own }) => `The pack of ${amount} has no unit; it is sold in ${own}.`,
  'pack-other-kind': ({ unit, own }) => `The pack is in ${unit}; it is sold in ${own}.`,
  'not-by-the-piece': ({ amount }) => `A tank or a plant is bought by the piece, not as a pack of ${amount}.`,
  'price-zero': () => 'The price is 0. Leave it empty while it is not known.',
  'other-currency': ({ text, currency }) => `The price "${text}" is not in ${currency}, the currency of the book.`,
  'several-currencies': ({ text, marks }) => `The price "${text}": the list has prices in ${marks.join(' and ')}.`,
  'no-article': () => 'Names no article.',
  'unknown-article': ({ article }) => `It is not known yet what article ${article} is.`,
  'unknown-material': ({ code, known }) =>
    `Nothing called ${code} in the books of materials, tanks and plants.${didYouMean(code, known)}`,
  'of-another-supplier': ({ supplier }) =>
    supplier === '' ? 'Sold by nobody in particular.' : `Sold by another supplier, ${supplier}.`,
  'no-label': () => 'Has no words for the new material.',
  'said-before': ({ row }) => `Row ${row} says the same.`,
  'two-prices': ({ rows }) =>
    `${rows.length === 1 ? `Row ${rows[0]} has` : `Rows ${rows.join(', ')} have`} another price for the same pack and day.`,
  'left-out': () => 'Left out by choice.',
};

/** Why a row of a list is left. */
export function sayListRowFault(fault: ListRowFault): string {
  return isEntryFault(fault) ? sayEntryFault(fault) : sayByKind(rowSayings, fault);
}

function isEntryFault(fault: ListRowFault): fault is EntryFault {
  return 'name' in fault;
}

function sayNumber(fault: Parameters<typeof asEntry>[0]): string {
  return sayEntryFault(asEntry(fault));
}

function asEntry(fault: Extract<ListRowFault, { readonly kind: 'pack-number' }>['fault']): EntryFault {
  return fault.kind === 'not-a-figure' ? { kind: 'not-a-figure', name: '', text: '' } : { ...fault, name: '' };
}

/** Headings as a list has them; those without words are left out. */
function quoted(headings: readonly string[]): string {
  const named = headings.filter((heading) => heading !== '').map((heading) => `"${heading.slice(0, 60)}"`);
  return named.length === 0 ? 'no headings' : named.slice(0, 20).join(', ');
}
