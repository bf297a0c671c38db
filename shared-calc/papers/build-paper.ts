import { buildCards, type BuildCard, type CardStep } from './build-card.ts';
import { reasonsOf, sayReason, sayStoodAgainst } from './reasons-said.ts';
import { heading, paragraph, sheet, type PaperBlock } from './document.ts';
import { displayFor, jobWords, titleOf, type MakePaper } from './paper-input.ts';
import type { WorkingHouse } from '#shared-calc/jobs/working-house.ts';
import { ok } from '#shared-calc/result.ts';

/** A card for each size, in build order: materials, depths and cautions. */
export const buildPaper: MakePaper = (input) => {
  const { survey } = jobWords(input);
  const terms = {
    records: input.records,
    prices: input.pricing.prices,
    display: displayFor(input),
    survey,
  };
  const cards = buildCards(input.bench, terms);
  const reasons = reasonsOf(input.records, jobWords(input).id);
  const decided = reasons.flatMap((done) => [sayReason(done, input.derived), ...sayStoodAgainst(done)]);
  return ok({
    data: cards.map((card) => ({
      ...card,
      reasons: reasons.map(({ step, on, who, note, against }) => ({ step, on, who, reason: note, against })),
    })),
    document: {
      title: `Build card, ${titleOf(input)}`,
      blocks: cards.flatMap((card) => cardBlocks(card, `${titleOf(input)}.${builtBy(card, input.house)}`, decided)),
    },
  });
};

/** ` Built by H3 Dry-season gecko.` */
function builtBy({ recipe }: BuildCard, { recipeOf }: WorkingHouse): string {
  return recipe === undefined ? '' : ` Built by ${recipe} ${recipeOf(recipe).title}.`;
}

function cardBlocks(card: BuildCard, title: string, decided: readonly string[]): readonly PaperBlock[] {
  const { called, tank, builds, lifting, place, minutes, steps } = card;
  const each = builds > 1 ? `; this card for each of ${builds}` : '';
  return [
    sheet(`Build card ${called}`),
    paragraph(`${title} ${tank}${each}. ${lifting.join(' ')} About ${hoursWords(minutes)} of work on each.`),
    { is: 'cautions', rows: place },
    ...(decided.length === 0 ? [] : [heading('Done all the same'), { is: 'list', items: decided } as const]),
    ...steps.flatMap(stepBlocks),
  ];
}

function stepBlocks({ title, goods, says, minutes, cautions }: CardStep, at: number): readonly PaperBlock[] {
  const timed = minutes !== undefined && minutes >= 0.5 && { aside: `${Math.round(minutes)} min` };
  return [
    { is: 'heading', text: `${at + 1}. ${title}`, step: true, ...timed },
    {
      is: 'table',
      head: ['what', 'material', 'how much'],
      rows: goods.map(goodsRow),
      right: [2],
      small: [1],
      tick: true,
      quiet: true,
    },
    { is: 'list', items: says },
    { is: 'cautions', rows: cautions, bare: true },
  ];
}

function goodsRow({ label, material, amount }: CardStep['goods'][number]): readonly string[] {
  return [label, material.toLowerCase() === label.toLowerCase() ? '' : material, amount];
}

/** Minutes in a builder's units: `45 min`, `6.5 h`. */
function hoursWords(minutes: number): string {
  return minutes < 90 ? `${Math.round(minutes)} min` : `${Math.round(minutes / 6) / 10} h`;
}
