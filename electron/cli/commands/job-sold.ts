import { writeDay } from '#shared-calc/calendar/write-day.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { houseOffers } from '#shared-calc/derive/house-offers.ts';
import { findJob } from '#shared-calc/jobs/find-job.ts';
import { changeWords, differenceWords, effectWords } from '#shared-calc/papers/house-said.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';
import type { Command } from '#electron/cli/command.ts';
import { offerJson } from '#electron/cli/house-answer.ts';
import { refusal, type Outcome } from '#electron/cli/outcome.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';
import type { Book } from '#electron/book/book.ts';
import { today } from '#electron/service/today.ts';

/** What a job is sold as, and in what it is not that any more. */
export const jobSoldCommand: Command = {
  name: 'job sold',
  usage:
    'job sold J02: the quote that a job is sold as, the changes of its house that it took, left or is offered, and what of it is not in the quote',
  options: bookOption,
  misuse: (given) => (given.words.length === 1 ? undefined : 'Say which job: job sold J02.'),
  run: (given) => withBook(given, (book) => soldAnswer(book, given.words[0] ?? '')),
};

function soldAnswer(book: Book, id: string): Outcome {
  const records = book.records();
  const derived = derive(records, today());
  const found = findJob(records, id);
  if (!found.ok) return refusal(sayJobFault(found.fault));
  const sold = derived.job(id)?.sold;
  const money = (coins: number) => coinsText(coins, derived.workshop.coinDecimals);
  if (!sold) {
    const none = { soldAs: null, taken: [], left: [], offered: [], offers: [], changed: [], sum: money(0) };
    const says = `${id} is ${found.value.state}: nothing is frozen, it follows its house.`;
    return { is: 'answer', json: none, table: () => says, notices: [] };
  }
  const { acceptedOn } = found.value;
  const { quote, taken, left, offered, differs } = sold;
  const { changed, coins } = differs();
  const offers = houseOffers(derived, id);
  const ids = (changes: readonly { readonly id: string }[]) => changes.map((change) => change.id);
  const sum = coins === undefined ? null : money(coins);
  return {
    is: 'answer',
    json: {
      soldAs: quote.id,
      taken: ids(taken),
      left: ids(left),
      offered: ids(offered),
      offers: offers.map((offer) => offerJson(offer, derived.workshop)),
      changed: changed.map(({ box, from = null, to = null }) => ({ box, from, to })),
      sum,
    },
    table: () =>
      [
        `${id} is sold as ${quote.id}, accepted ${acceptedOn === undefined ? 'on a day that is not known' : writeDay(acceptedOn, derived.display.dateOrder)}`,
        ...taken.map((change) => `took ${change.id}: ${changeWords(change, derived.display)}`),
        ...left.map((change) => `left ${change.id}: ${changeWords(change, derived.display)}`),
        ...offers.map(
          ({ change, effect }) =>
            `is offered ${change.id}: ${changeWords(change, derived.display)}; ${effectWords(effect(), derived)}`,
        ),
        differenceWords(quote.id, differs(), derived) || `as in ${quote.id}`,
        ...changed.map(({ box, from = 'none', to = 'none' }) => `  ${box} ${from} -> ${to}`),
      ].join('\n'),
    notices: [],
  };
}
