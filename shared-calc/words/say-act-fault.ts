import { sayRowFault } from './say-row-fault.ts';
import { sayLogFaults } from './say-log-faults.ts';
import { sayDays, sayPlainDate } from '#shared-calc/prepare/say-day.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import { goodsWords, packWords } from '#shared-calc/quantity/goods-words.ts';
import { inSentence } from '#shared-calc/recipe/line-label.ts';
import { capital } from '#shared-calc/rule/capital.ts';
import type { ActFault, Break, Need, RefusedCell, LinesOfRecipe } from '#shared-calc/acts/act-fault.ts';
import { nounOf } from '#shared-calc/fields/uses.ts';
import type { JobFault } from '#shared-calc/jobs/job-fault.ts';
import type { RecordFault } from '#shared-calc/records/book-fault.ts';
import { byRuleName, type Called } from './called.ts';
import { sayByKind, type Sayings } from './say-by-kind.ts';
import { familySayings } from './say-family-fault.ts';
import { sayBoxFault } from './say-box-cause.ts';
import { sayNameFault } from './say-name-fault.ts';
import { sayUseFault, sayWithoutUse } from './say-use.ts';
import type { Misfit } from '#shared-calc/records/misfit.ts';
import { isMisfit, sayMisfit } from './say-misfit.ts';
import { sayJobFault } from './say-job-fault.ts';
import { isRecordFault, sayRecord, sayRecordFault } from './say-record-fault.ts';

type Own = Exclude<ActFault, JobFault | RecordFault | Misfit>;

const sayings: Sayings<Own, [Called]> = {
  'no-record': ({ record, near }) =>
    `There is no ${sayRecord(record)}.${near === undefined ? '' : ` Did you mean ${near}?`}`,
  needed: ({ record, by }) =>
    `${capital(sayRecord(record))} stays. ${by
      .map(sayNeed)
      .map(({ what, why }) => `It is needed for ${what}: ${why}.`)
      .join(' ')}`,
  'use-of-another-kind': sayUseFault,
  'bad-name': ({ fault }) => sayNameFault(fault),
  'no-lines-chosen': ({ section }) =>
    section === undefined ? 'Say which lines, or which section.' : `There is no section called ${section}.`,
  'reads-others': ({ recipe, lines }) => `They read what ${recipe} does not have: ${labelsOf(lines)}. Take that along.`,
  'names-clash': ({ recipe, lines }) =>
    `${recipe} has ${labelsOf(lines)} already. Keep its own, take these in their place, or take them under new names.`,
  'name-taken': ({ name }) => `There is a line called ${name} already.`,
  'at-the-end': ({ label, end }) => `${label} is the ${end} line already.`,
  'no-unit': ({ unit }) => `There is no unit called ${unit}.`,
  'bounds-crossed': () => 'The low bound lies above the high one.',
  'range-without-figure': ({ line }) =>
    `${line} has no figure of its own: only a given figure has a range. Write the figure first, or take the range away.`,
  'half-a-range': ({ line }) =>
    `${line} has one end of a range: write both, the least and the most it may be, or none.`,
  'range-crossed': ({ line, unit, least, likely, most, low, high }) => {
    const behind = unit === 'number' ? '' : ` ${unit}`;
    const bounds = [
      low === undefined ? '' : `at least ${low}${behind}`,
      high === undefined ? '' : `at most ${high}${behind}`,
    ];
    const within = bounds.filter((each) => each !== '').join(' and ');
    const allowed = within === '' ? '' : ` and within its bounds, ${within}`;
    return `The range of ${line} is not in order: least ${least}, likely ${likely}, most ${most}${behind}. Write it in order${allowed}.`;
  },
  'sentence-names-no-line': ({ name }) => `{${name}} in the sentence names no line.`,
  'would-break': ({ breaks }, called) =>
    `This would break ${sayBreaks(breaks)}. ${breaks
      .slice(0, 1)
      .map(({ fault, line }) => sayBoxFault(fault, line, called))
      .join('')}`,
  'use-stays': ({ use }) => `${sayWithoutUse(use)} Move that use to another line first.`,
  'coins-change': ({ from, to }) =>
    `The currency has ${from} decimals, not ${to}: every amount of the book changes with them. Use rescaleCoins.`,
  'uneven-coins': ({ record, amount }) =>
    `${amount} of ${record.kind === 'workshop' ? 'a step of the workshop' : `the ${sayRecord(record)}`} has parts that such a coin does not know. Write it without them first.`,
  'cells-refused': ({ cells }, called) => sayRefusedCells(cells, called),
  'nothing-written': ({ what }) => withoutValue[what],
  'tank-measure': () => 'A measurement belongs to its tank: change it in the tank book.',
  'code-taken': ({ code }) => `There is a tank called ${code} already: choose another code.`,
  'no-size-name': ({ size }) => `${size}: write what it is to be called, such as Left of the door.`,
  'size-name-long': ({ size, letters, most }) =>
    `${size}: a name has at most ${most} letters; this one has ${letters}.`,
  'size-name-taken': ({ name }) => `Another size of this job is called ${name} already: choose another name.`,
  'not-to-give': ({ material, unit, asked, free, display }) => {
    const goods = (amount: number) => `${goodsWords(amount, unit, display)} of ${material}`;
    const again = unit === 'each' ? 'count again' : 'measure again';
    return `The Store has ${goods(free)} to give, not ${goods(asked)}. What is kept for others stays: ${again}, or give back what is kept.`;
  },
  'more-than-stands': ({ unit, stands, display }) =>
    `The store has ${(unit === 'each' ? goodsWords : packWords)(stands, unit, display).replace('\u00a0', ' ')}; count it first.`,
  'counted-before': ({ goods, on, display }) =>
    `Some of ${goods} that was taken after ${sayPlainDate(on, display)} would not have been there: count it on a later day.`,
  'least-over-up-to': ({ least, upTo }) => `Fill up to ${upTo} is under the least, ${least}: write it above.`,
  'by-own-acts': ({ record }) =>
    record.kind === 'order'
      ? `${capital(sayRecord(record))} stays as it was sent: take it in, or close it.`
      : `${capital(sayRecord(record))} stays: count the goods, or write what came or went as a move of its own.`,
  'nothing-free': ({ job }) => `The Store has nothing free that ${job} still needs.`,
  'stands-against': ({ job, state, against }) => {
    const more = against.length > 1 ? ` And ${against.length - 1} more.` : '';
    return `Something stands against ${job} being ${state}. ${against[0]?.why ?? ''}${more} To go on, give a reason and who decides.`;
  },
  'nothing-came': () => 'Nothing came: count at least one pack.',
  'no-order-line': ({ order, line, lines }) =>
    `${order} has no line ${line}: it has ${lines === 1 ? 'one line' : `lines 1 to ${lines}`}.`,
  'more-than-open': ({ order, line: { n, label, count }, came, open }) =>
    `Of line ${n} of ${order}, ${label}, ${packs(came)} came and ${packs(open)} of ${count} were still to come. With a note more is taken in.`,
  'order-all-in': ({ order }) => `All of ${order} is in already. With a note more of it is taken in.`,
  'order-closed': ({ order, closedOn, display }) =>
    `${order} was closed on ${sayPlainDate(closedOn, display)}. With a note what comes after all is taken in.`,
  'before-ordered': ({ order, ordered, on, display }) =>
    `${order} was placed on ${sayPlainDate(ordered, display)}, after ${sayPlainDate(on, display)}.`,
  'pack-of-another': ({ pack, supplier, seller }) => `${pack} is sold by ${seller}, not by ${supplier}.`,
  'pack-without-price': ({ pack, on, display }) => `${pack} has no price on ${sayPlainDate(on, display)}.`,
  'tub-gives-less': ({ tub, asked, may, on, display }) =>
    `Tub ${tub} may give ${whole(may)} on ${sayPlainDate(on, display)}, not ${whole(asked)}: the rest is its breeding stock.`,
  'tub-not-standing': ({ tub, on, display }) => `Tub ${tub} does not stand on ${sayPlainDate(on, display)}.`,
  'tub-moved-later': ({ tub, on, display }) =>
    `Tub ${tub} was harvested or counted after ${sayPlainDate(on, display)}: take that back first.`,
  'tub-not-known': ({ tub }) => `How many animals tub ${tub} has is not known at its temperature: count it.`,
  'batch-has-less': ({ batch, asked, has }) =>
    `Batch ${batch} has ${whole(has)} animals for that, not ${whole(asked)}.`,
  'animals-of-another-kind': ({ batch, size, named }) =>
    named === undefined
      ? `${size} names no kind of animal: name the kind of batch ${batch} there first.`
      : `${size} is for another kind of animal, ${named}, than batch ${batch}.`,
  'still-placed': ({ size, batch }) => `Batch ${batch} is planned into ${size}: take it back first.`,
  'in-quarantine': (fault) => `${sayQuarantine(fault)} To plan them in all the same, give a reason and who decides.`,
  'done-for-nothing': () => 'Say what it was done for: a job, a tub or an order.',
  'no-step': ({ step, steps, near }) =>
    `No step called ${step}.${near === undefined ? '' : ` Did you mean ${near}?`} Steps: ${steps.join(', ')}, or a task of the recipe such as L11.`,
  'half-a-reason': ({ lacks }) =>
    lacks === 'who' ? 'Say who decides it, such as R-builder.' : 'Give the reason why it is done all the same.',
  'reason-stays': ({ record }) =>
    `${capital(sayRecord(record))} stays as it was written. A reason is written by the act it is for, such as moveJob with anyway and who.`,
  'no-quote-of-job': ({ quote, job, quotes, near }) =>
    `${quote} is no quote of ${job}.${near === undefined ? '' : ` Did you mean ${near}?`} ${quotes.length === 0 ? 'None has been issued.' : `It has ${quotes.join(', ')}.`}`,
  'quote-unreadable': ({ quote }) => `Quote ${quote} cannot be read; it was issued by another form of the program.`,
  'differs-from-quote': ({ job, quote, words }) =>
    `${job} differs from ${quote} in ${words}: issue a revision, or say --as-issued.`,
  'no-house-change': ({ recipe }) => `${recipe === '' ? 'The house' : recipe} has that already: nothing to propose.`,
  'in-force-already': ({ change, on, display }) =>
    `${change} is in force since ${sayPlainDate(on, display)}: it stays in the log. Change the line back instead.`,
  'only-proposed': ({ change }) => `${change} is only proposed: put it in force first.`,
  'line-gone': ({ change, line }) => `${line} has left the house: drop ${change}.`,
  'answered-already': ({ change, job, answer, on, display }) =>
    `${job} ${answer === 'take' ? 'took' : 'left'} ${change} on ${sayPlainDate(on, display)}; it is answered once.`,
  'not-offered': ({ change, job, why }) => `${change} is not offered to ${job}: ${notOffered[why]}.`,
  'too-late-to-take': ({ change, job, state }) =>
    `${job} is ${state}: ${change} comes too late for it. An answer is asked from accepted to ready to build.`,
  'cannot-take': ({ change, job, label }) =>
    `${job} cannot take ${change}: ${label} could not be worked in the house that it was sold in.`,
  ...familySayings((fault, called) => sayActFault(fault, called)),
  'house-log': ({ record }) =>
    `${capital(sayRecord(record))} is written by the acts of a house: proposeHouse, forceHouse, dropHouse, answerHouse, and every edit of a line.`,
  'no-place-collected': () => 'Say where the leaves were collected: it stands on the label.',
  'nobody-signs': () => 'Say who signs the readings.',
  'too-many-readings': () => 'Too many readings to keep: one an hour is enough. Take some out.',
  'bad-log': ({ rows }) => sayLogFaults(rows),
  'no-watch': ({ column }) => `No watch of ${column} is kept: keep its readings first.`,
  'no-room-reading': () => 'No reading has the room beside it: write its degC and % behind those of the tank.',
  'no-water-lost': () => 'Say how much water left in a day: what was put in, less what was drained.',
  'air-not-taught': () =>
    'Teach the air factor first, by the water lost in a day: how damp a tank is hangs on its air.',
  'rest-near-full': ({ humidity }) => `The driest reading is ${humidity} %: too near full to tell.`,
  'reading-does-not-fit': () => 'One of the readings does not fit; look at the hygrometer first.',
  'factor-not-worked': () => 'The recipe does not work what this watch measures.',
  'no-lesson': ({ label }) => `The last jobs offer nothing for ${inSentence(label)}: five must have measured it.`,
  'no-words': () => 'A line needs its words.',
  'no-recipe-title': () => 'A recipe needs a title.',
  'not-sold-by': ({ material, supplier }) => `${supplier} sells no pack of ${material}.`,
  'no-supplier': ({ supplier, near }) =>
    `No supplier called ${supplier}.${near === undefined ? '' : ` Did you mean ${near}?`}`,
  'nothing-priced': ({ supplier, on, display }) =>
    `${supplier} sells nothing that has a price on ${sayPlainDate(on, display)}.`,
  'pack-there': ({ material }) => `${material} has such a pack already.`,
  'unit-of-another': ({ label, unit, own }) =>
    `${label} is new in ${own} and in ${unit}: give one of them another name.`,
  'rows-refused': ({ rows }) =>
    `${rows.map(({ row, fault }) => `Row ${row}: ${sayRowFault(fault)}`).join(' ')} Nothing was taken in.`,
  'bad-input': ({ issues }) => {
    const said = issues.map(({ field, called, says }) =>
      called === undefined ? `${field === '' ? 'the input' : field} ${says}` : `${called}: ${says}`,
    );
    return `${capital([...new Set(said)].join('; '))}.`;
  },
};

function packs(count: number): string {
  return writeNumber(count, Number.isInteger(count) ? 0 : 2);
}

const withoutValue = {
  back: 'This follows the house already.',
  note: 'A note stands beside a local value: write one first.',
  asker: 'Only a local value has somebody who asked for it: write one first.',
  'whole job': 'Write a value in this box first; then it can hold for the whole job.',
  tank: 'Write a value in this box first; then it can always hold for this tank.',
} as const;

function sayQuarantine({
  batch,
  until,
  daysLeft,
  on,
  display,
}: Extract<Own, { readonly kind: 'in-quarantine' }>): string {
  return `Batch ${batch} is in quarantine until ${sayPlainDate(until, display)}, ${sayDays(daysLeft)} after ${sayPlainDate(on, display)}.`;
}

/** Animals, down to the whole. */
function whole(animals: number): string {
  return writeNumber(Math.floor(animals + 1e-6), 0);
}

/** Why an act is refused, in one sentence; by default lines have their names in rules. */
export function sayActFault(fault: ActFault, called?: Called): string {
  if (isOwn(fault)) return sayByKind(sayings, fault, called ?? byRuleName);
  if (isMisfit(fault)) return sayMisfit(fault);
  return isRecordFault(fault) ? sayRecordFault(fault) : sayJobFault(fault, called);
}

/** The first cell in full, the others by name. */
function sayRefusedCells(cells: readonly RefusedCell[], called: Called): string {
  const [first, ...more] = cells;
  if (!first) return '';
  const says = `${sayCell(first)}: ${sayBoxFault(first.fault, first.line, called)}`;
  if (more.length === 0) return says;
  const rest = more.length > 3 ? ` and ${more.length - 3} more` : '';
  return `${says} Nor can be read: ${more.slice(0, 3).map(sayCell).join('; ')}${rest}. Nothing was written.`;
}

function sayCell({ label, size }: RefusedCell): string {
  return `${label}, ${size}`;
}

function isOwn(fault: ActFault): fault is Own {
  return Object.hasOwn(sayings, fault.kind);
}

/** "Room for water, Drainage fills in and 3 more". */
export function sayBreaks(breaks: readonly Pick<Break, 'label'>[]): string {
  const labels = breaks.slice(0, 4).map((each) => each.label);
  return breaks.length > 4 ? `${labels.join(', ')} and ${breaks.length - 4} more` : labels.join(', ');
}

export function sayNeed(need: Need): Against {
  switch (need.is) {
    case 'program':
      return { what: need.what, why: need.why };
    case 'use':
      return { what: nounOf(need.use), why: 'the program reads it for that' };
    case 'written':
      return { what: `job ${need.job}`, why: 'something is written over it there' };
    case 'changed below':
      return { what: `recipe ${need.recipe}`, why: 'it changes it' };
    case 'sentence':
      return { what: inSentence(need.label), why: 'its sentence names it' };
    default:
      return { what: inSentence(need.label), why: 'its rule reads it' };
  }
}

export interface Against {
  readonly what: string;
  readonly why: string;
}

/** A refusal for programs. */
export interface FaultJson {
  readonly kind: string;
  readonly says: string;
  /** The field or the record that it refers to. */
  readonly at?: string;
  readonly against?: readonly Against[];
}

export function faultJson(fault: ActFault): FaultJson {
  const at = 'at' in fault ? fault.at : 'record' in fault ? sayRecord(fault.record) : undefined;
  const against = againstOf(fault);
  return {
    kind: fault.kind,
    says: sayActFault(fault),
    ...(at !== undefined && at !== '' && { at }),
    ...(against !== undefined && { against }),
  };
}

function againstOf(fault: ActFault): readonly Against[] | undefined {
  if (fault.kind === 'in-quarantine') return [{ what: 'quarantine', why: sayQuarantine(fault) }];
  if (fault.kind === 'needed') return fault.by.map(sayNeed);
  if (fault.kind === 'stands-against') return fault.against;
  return fault.kind === 'still-used' ? usersOf(fault) : undefined;
}

function usersOf({ record, by }: Extract<RecordFault, { readonly kind: 'still-used' }>): readonly Against[] {
  return by.map((user) => ({ what: sayRecord(user), why: `it names ${record.id}` }));
}

function labelsOf(lines: LinesOfRecipe['lines']): string {
  return lines.map(({ label }) => label).join(', ');
}

const notOffered = {
  follows: 'it follows its house, and has it already',
  'in quote': 'the quote that it is sold as has it already',
  'other recipe': 'it is built by another recipe',
} as const;
