import { shownUnitWords } from '#shared-calc/quantity/figure-words.ts';
import { cautionsBlock, paragraph, sheet, type PaperBlock } from './document.ts';
import { displayFor, titleOf, type MakePaper } from './paper-input.ts';
import { watchCards, type WatchCard } from './watch-card.ts';
import { ok } from '#shared-calc/result.ts';

/** Readings over 24 to 72 h with the lamps on, a card for each size, to write in and sign. */
export const watchPaper: MakePaper = (input) => {
  const display = displayFor(input);
  const cards = watchCards(input.bench, display);
  const degrees = shownUnitWords('degC', display);
  return ok({
    data: cards,
    document: {
      title: `Commissioning watch, ${titleOf(input)}`,
      blocks: cards.flatMap((card) => cardBlocks(card, { title: titleOf(input), degrees })),
    },
  });
};

interface CardHead {
  readonly title: string;
  /** The written unit of its temperatures. */
  readonly degrees: string;
}

function cardBlocks(card: WatchCard, { title, degrees }: CardHead): readonly PaperBlock[] {
  const { called, tank, coldest, hottest, leastHours, expected, hours, cautions } = card;
  const { driest, dampest } = card.band;
  return [
    sheet(`Commissioning watch ${called}`),
    paragraph(
      `${title}. ${tank}. Lamps on, doors shut. Between ${coldest} and ${hottest}, humidity between ${driest} and ${dampest} %, for ${leastHours} h at least.`,
    ),
    ...expected.map(paragraph),
    {
      is: 'table',
      head: ['hour'],
      rows: hours.map((hour) => [String(hour)]),
      right: [0],
      write: ['day, time', `${degrees} now`, 'hottest', 'coldest', 'humidity %', 'who'],
    },
    cautionsBlock(cautions),
    { is: 'sign', items: [`Hottest and coldest, ${degrees}; driest and dampest, %`, 'Read by', 'Day'] },
  ];
}
