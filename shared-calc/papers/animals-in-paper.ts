import { heading, paragraph, type PaperBlock } from './document.ts';
import { datedJob } from './dated-job.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { displayFor, jobWords, titleOf, type MakePaper } from './paper-input.ts';
import { paperWeekday } from './paper-words.ts';
import { animalsInCard, type AnimalsInCard } from './watch-card.ts';
import { ok } from '#shared-calc/result.ts';
import { mindedBlocks } from './minded-blocks.ts';

/** When animals go in, the conditions before that, and the days of the looks. */
export const animalsInPaper: MakePaper = (input) => {
  const dated = datedJob(input);
  if (!dated.ok) return dated;
  const { plan, facts } = dated.value;
  const display = displayFor(input);
  const card = animalsInCard({
    build: plan.build,
    settleInDays: facts.settleIn,
    job: jobWords(input),
    bench: input.bench,
    display,
  });
  return ok({ data: card, document: { title: `Animals-in plan, ${titleOf(input)}`, blocks: blocksOf(card, display) } });
};

function blocksOf(card: AnimalsInCard, display: Display): readonly PaperBlock[] {
  return [
    {
      is: 'facts',
      rows: [
        ['Animals', card.animals],
        ...card.sizes.map(sizeRow),
        ['Built', paperWeekday(card.build, display)],
        ['Animals in', `${paperWeekday(card.animalsIn, display)}, day 0`],
      ],
    },
    heading('Before they go in'),
    { is: 'list', items: card.before, tick: true },
    ...looksOf(card, display),
    ...mindedBlocks(card),
  ];
}

/** `T07: 4 of Small bold frog. From 26 °C on act. Above 27 °C is an emergency.` */
function sizeRow({ called, animals, above, emergency }: AnimalsInCard['sizes'][number]): readonly [string, string] {
  return [called, `${animals.replace(/\.$/, '')}. ${above} act. ${emergency}`];
}

function looksOf({ looks, lookFor, settleInDays }: AnimalsInCard, display: Display): readonly PaperBlock[] {
  if (looks.length === 0) {
    return [
      paragraph(
        `The tank settles in for ${settleInDays} days before the animals: no watch plan of its own is wanted. Look daily for 28 days all the same.`,
      ),
    ];
  }
  return [
    heading('Days to look'),
    paragraph(`The tank has only ${settleInDays} days to settle in: each of these days is kept.`),
    {
      is: 'table',
      head: ['day', 'date'],
      rows: looks.map(({ day, date }) => [String(day), paperWeekday(date, display)]),
      small: [1],
      write: [...lookFor, 'who'],
    },
  ];
}
