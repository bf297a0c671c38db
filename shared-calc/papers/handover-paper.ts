import { datedJob } from './dated-job.ts';
import { heading, paragraph, sheet, type PaperBlock, type PaperCaution, type PaperFact } from './document.ts';
import { handoverCards, type HandoverCard, type HandoverSign } from './handover-card.ts';
import { displayFor, jobWords, titleOf, type MakePaper, type PaperInput } from './paper-input.ts';
import { paperDay, paperWeekday } from './paper-words.ts';
import { careWords } from './step-words.ts';
import type { SaidDays } from '#shared-calc/prepare/say-day.ts';
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
    document: {
      title: `Handover card, ${titleOf(input)}`,
      blocks: cards.flatMap((card) => cardBlocks(card, input)),
    },
  });
};

function cardBlocks(card: HandoverCard, input: PaperInput): readonly PaperBlock[] {
  const days = displayFor(input);
  return [
    sheet(`Handover card ${card.called}`),
    paragraph(`${titleOf(input)}. ${card.tank}. Handed over ${paperWeekday(card.handover, days)}.`),
    heading('Keep it so'),
    { is: 'facts', look: 'settings', rows: card.keep },
    heading('What is done when'),
    { is: 'facts', look: 'run in', rows: card.tasks.map(({ when, acts }) => [when, acts.join(' ')]) },
    heading('This is normal'),
    { is: 'list', items: card.normal },
    heading('This is not'),
    { is: 'facts', look: 'run in', rows: card.notNormal.map((sign) => signRow(sign, card)) },
    heading('Whom to call'),
    { is: 'list', items: card.people, write: 'name and number' },
    heading('When we come'),
    { is: 'facts', look: 'run in', rows: visitsOf(card, days) },
    ...mindedBlocks(card).map((block) => withoutSaid(block, card)),
    ...(card.terms.length === 0 ? [] : [heading('What is ours, from the quote'), paragraph(card.terms.join(' '))]),
    { is: 'sign', items: ['For the client', 'For the workshop', 'Day'] },
  ];
}

/** A sign that states a caution in full also names who decides. */
function signRow({ sign, act, caution: id }: HandoverSign, { cautions }: HandoverCard): PaperFact {
  const caution = cautions.find((each) => each.id === id);
  return caution ? [sign, act, caution.decides] : [sign, act];
}

/** A caution that a sign states in full is not written again. */
function withoutSaid(block: PaperBlock, { notNormal }: HandoverCard): PaperBlock {
  if (block.is !== 'cautions') return block;
  const isSaid = (id: PaperCaution['id']) => notNormal.some(({ caution }) => caution !== undefined && caution === id);
  return { ...block, rows: block.rows.map((row) => (isSaid(row.id) ? { ...row, elsewhere: true } : row)) };
}

/** The next visit first, with its weekday; visits of the same kind together. */
function visitsOf({ visits }: HandoverCard, days: SaidDays): readonly (readonly [string, string])[] {
  return [...Map.groupBy(visits, ({ act }) => act)].map(([act, same]) => [
    careWords[act] ?? act,
    same.map(({ date }) => (date === visits[0]?.date ? paperWeekday : paperDay)(date, days)).join('; '),
  ]);
}
