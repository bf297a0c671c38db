import { nounOf } from '#shared-calc/fields/uses.ts';
import type { JobFault } from '#shared-calc/jobs/job-fault.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { sayBoxCause, sayBoxFault } from './say-box-cause.ts';
import type { Called } from './called.ts';
import { sayByKind, type Sayings } from './say-by-kind.ts';
import { sayOrderFault } from './say-order-fault.ts';

const sayings: Sayings<JobFault, [Called | undefined]> = {
  'no-job': ({ job, jobs }) =>
    `No job called ${job}. ${jobs.length === 0 ? 'There are none yet.' : `Jobs: ${jobs.join(', ')}.`}`,
  'not-given': ({ use }) => `No ${nounOf(use)} is given in this recipe.`,
  'no-title': () => 'A job needs a title.',
  'no-recipe': ({ recipe, recipes }) => `No recipe called ${recipe}. Recipes: ${recipes.join(', ')}.`,
  'no-tank': ({ tank, near }) => `No tank called ${tank} in the tank book.${didYouMean(near)}`,
  'bad-count': ({ size, most }) => `${size}: build a size 1 to ${most} times.`,
  'bad-size': ({ size }) => `"${size}" is no size. Write T03, or T07x2 to build it twice.`,
  'size-measured': ({ size }) => `${size} stays: what it took has been written down for it.`,
  'no-size': ({ size, sizes }) =>
    `No size ${size} in this job. ${sizes.length === 0 ? 'It has none yet.' : `Sizes: ${sizes.join(', ')}.`}`,
  'no-sizes': ({ job }) => `${job} has no size yet: take one first.`,
  'no-set': ({ text }) => `${text}: write line=RULE, or T07.line=RULE for one size.`,
  'no-line': ({ line, near }) => `Nothing called ${line}.${didYouMean(near)}`,
  'not-in-recipe': ({ line, size, recipe }) => `${line} is not in recipe ${recipe}, which ${size} is built by.`,
  unreadable: ({ line, text, fault }, called) => {
    if (called) return sayBoxFault(fault, line, called);
    const at = fault.kind === 'rule' ? fault.faults[0]?.from : undefined;
    return `${line}=${text}: ${sayBoxFault(fault, line)}${at === undefined ? '' : ` (at ${at + 1})`}`;
  },
  loop: ({ line, text, cycle }, called) =>
    `${called ? '' : `${line}=${text}: `}${sayBoxCause({ why: 'loop', cycle }, line)}`,
  'not-a-day': ({ text, why }) =>
    why === 'form' ? `${text} is no day: write it as 2026-11-25.` : `There is no ${text} in the calendar.`,
  'no-state': ({ state, near, states }) => `No state called ${state}.${didYouMean(near)} States: ${states.join(', ')}.`,
  'same-state': ({ job, state }) => `${job} is ${state} already.`,
  'no-deposit-yet': ({ job, state }) =>
    `${job} cannot be ${state}: its deposit is not in. Record it with its day, or accept the quote first.`,
  'not-an-amount': ({ text }) => `${text} is no sum of money that a deposit can be.`,
  'not-worked': ({ job, fault }) => `${job}: ${sayOrderFault(fault)}`,
  'no-material': ({ material, near }) => `No material called ${material}.${didYouMean(near)}`,
  'not-in-store': ({ material, asked, free, unit }) =>
    `The Store cannot keep ${cleanNoise(asked)} ${unit} of ${material}: ${cleanNoise(free)} ${unit} are free.`,
  'not-kept': ({ job, material, asked, free, unit }) =>
    `${job} cannot give back ${cleanNoise(asked)} ${unit} of ${material}: ${cleanNoise(free)} ${unit} are kept for it.`,
};

/**
 * Why an act on a job is refused, in one sentence with its cure. If lines are `called` by their labels, the unreadable
 * text is visible on the page and not repeated.
 */
export function sayJobFault(fault: JobFault, called?: Called): string {
  return sayByKind(sayings, fault, called);
}

function didYouMean(near: string | undefined): string {
  return near === undefined ? '' : ` Did you mean ${near}?`;
}
