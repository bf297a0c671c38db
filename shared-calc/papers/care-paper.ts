import type { SaidDays } from '#shared-calc/prepare/say-day.ts';
import { eachOnce } from '#shared-calc/cautions/all-cautions.ts';
import { addDays } from '#shared-calc/calendar/day.ts';
import { datedJob } from './dated-job.ts';
import { cautionsBlock, heading, paragraph, type PaperBlock } from './document.ts';
import type { SizeCare } from '#shared-calc/prepare/size-care.ts';
import { displayFor, titleOf, type MakePaper } from './paper-input.ts';
import { paperDay, paperWeekday } from './paper-words.ts';
import { careWords } from './step-words.ts';
import type { CareRound } from '#shared-calc/prepare/care-calendar.ts';
import { ok } from '#shared-calc/result.ts';

const YEAR = 365;

/** The words of each round, before its days of the first year. */
const roundWords: Readonly<Record<CareRound['act'], string>> = {
  drain: 'Drain',
  'refill and clean': 'Refill and clean the can',
  'look at the leaves': 'Look at the leaves',
  'top up leaves': 'Top up the leaves',
};

/** The first year of a tank: our visits, draining and refilling by day, and when the lamps are due. */
export const carePaper: MakePaper = (input) => {
  const dated = datedJob(input);
  if (!dated.ok) return dated;
  const { plan, care, lamps } = dated.value;
  const days = displayFor(input);
  const blocks: readonly PaperBlock[] = [
    paragraph(`Handed over ${paperWeekday(plan.handover, days)}.`),
    heading('We call and visit'),
    {
      is: 'list',
      items: plan.care.map(({ act, date }) => `${paperWeekday(date, days)}: ${careWords[act] ?? act}`),
      tick: true,
    },
    ...(lamps ? [paragraph(`Lamps are due from ${paperDay(lamps.from, days)} to ${paperDay(lamps.to, days)}.`)] : []),
    ...care.flatMap((size) => sizeBlocks(size, days)),
    cautionsBlock(eachOnce(care.flatMap(({ cautions }) => cautions))),
  ];
  return ok({
    data: { handover: plan.handover, visits: plan.care, sizes: care, lamps: lamps ?? null },
    document: { title: `Care calendar, ${titleOf(input)}`, blocks },
  });
};

/** The days of a round in the first year. */
function roundDays({ everyDays, first, once }: CareRound): readonly string[] {
  const times = once ? 1 : Math.max(1, Math.floor(YEAR / everyDays));
  return Array.from({ length: times }, (_, at) => addDays(first, at * everyDays));
}

function sizeBlocks({ called, tank, rounds }: SizeCare, days: SaidDays): readonly PaperBlock[] {
  const none = rounds.length === 0 ? [paragraph('Nothing collects in it and nothing is misted by a pump.')] : [];
  return [
    heading(`${called}, ${tank}`),
    ...none,
    ...rounds.map((round): PaperBlock => ({
      is: 'days',
      text: `${roundWords[round.act]}, ${round.says}`,
      items: roundDays(round).map((each) => paperDay(each, days)),
    })),
  ];
}
