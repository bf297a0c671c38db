import { datedJob } from './dated-job.ts';
import { heading, paragraph, type PaperBlock } from './document.ts';
import { handoverCards, type HandoverCard } from './handover-card.ts';
import { displayFor, jobWords, titleOf, type MakePaper } from './paper-input.ts';
import { paperDay, paperWeekday } from './paper-words.ts';
import { careWords } from './step-words.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { ok } from '#shared-calc/result.ts';
import { mindedBlocks } from './minded-blocks.ts';

/** The page that hangs next to a tank, one for each size. */
export const handoverPaper: MakePaper = (input) => {
  const dated = datedJob(input);
  if (!dated.ok) return dated;
  const { handover, care } = dated.value.plan;
  const cards = handoverCards(input.bench, {
    job: jobWords(input),
    handover,
    care,
    workshop: workshopOf(input.records),
    display: displayFor(input),
  });
  return ok({
    data: cards,
    document: { title: `Handover card, ${titleOf(input)}`, blocks: cards.flatMap(cardBlocks) },
  });
};

function cardBlocks(card: HandoverCard): readonly PaperBlock[] {
  return [
    heading(`${card.called}: ${card.tank}`),
    paragraph(`Handed over ${paperWeekday(card.handover)}.`),
    heading('Keep it so'),
    { is: 'facts', rows: card.keep },
    heading('What is done when'),
    { is: 'facts', rows: card.tasks.map(({ when, acts }) => [when, acts.join(' ')]) },
    heading('This is normal'),
    { is: 'list', items: card.normal },
    heading('This is not'),
    { is: 'facts', rows: card.notNormal.map(({ sign, act }) => [sign, act]) },
    heading('Whom to call'),
    { is: 'list', items: card.people },
    heading('When we come'),
    { is: 'facts', rows: visitsOf(card) },
    ...mindedBlocks(card),
    heading('What is ours, from the quote'),
    ...card.terms.map(paragraph),
  ];
}

/** The next visit first, with its weekday; visits of the same kind together. */
function visitsOf({ visits }: HandoverCard): readonly (readonly [string, string])[] {
  return [...Map.groupBy(visits, ({ act }) => act)].map(([act, same]) => [
    careWords[act] ?? act,
    same.map(({ date }) => (date === visits[0]?.date ? paperWeekday(date) : paperDay(date))).join('; '),
  ]);
}
