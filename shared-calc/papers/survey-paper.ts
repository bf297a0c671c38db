import { heading, type PaperBlock } from './document.ts';
import { jobWords, titleOf, type MakePaper } from './paper-input.ts';
import { surveyCard } from './survey-card.ts';
import { ok } from '#shared-calc/result.ts';
import { mindedBlocks } from './minded-blocks.ts';

/** What was asked on site; what was not has room to be written in. */
export const surveyPaper: MakePaper = (input) => {
  const card = surveyCard(jobWords(input), { ...input.derived, records: input.records });
  const blocks: readonly PaperBlock[] = [
    { is: 'facts', rows: card.known },
    ...card.parts.flatMap(({ title, answers, asks }): readonly PaperBlock[] => [
      heading(title),
      { is: 'facts', rows: answers },
      { is: 'list', items: asks, write: 'found', short: true },
    ]),
    ...mindedBlocks(card),
  ];
  return ok({ data: card, document: { title: `Survey card, ${titleOf(input)}`, blocks } });
};
