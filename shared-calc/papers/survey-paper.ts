import { heading, type PaperBlock } from './document.ts';
import { jobWords, titleOf, type MakePaper } from './paper-input.ts';
import { surveyCard } from './survey-card.ts';
import { ok } from '#shared-calc/result.ts';
import { mindedBlocks } from './minded-blocks.ts';

/** What to measure and ask on site, to write in there. */
export const surveyPaper: MakePaper = (input) => {
  const card = surveyCard(jobWords(input));
  const blocks: readonly PaperBlock[] = [
    { is: 'facts', rows: card.known },
    ...card.parts.flatMap(({ title, asks }): readonly PaperBlock[] => [
      heading(title),
      { is: 'list', items: asks, write: 'found' },
    ]),
    ...mindedBlocks(card),
  ];
  return ok({ data: card, document: { title: `Survey card, ${titleOf(input)}`, blocks } });
};
