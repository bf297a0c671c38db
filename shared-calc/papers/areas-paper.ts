import type { SaidDays } from '#shared-calc/prepare/say-day.ts';
import type { AreaCare } from '#shared-calc/prepare/size-care.ts';
import { siteActs } from '#shared-calc/cautions/acts.ts';
import { cautionsOf } from '#shared-calc/prepare/act-cautions.ts';
import { cautionsBlock, heading, type PaperBlock, type PaperDocument } from './document.ts';
import { paperDay, paperWeekday } from './paper-words.ts';
import { careWords } from './step-words.ts';

/** Visits to all tanks at clients, by area and week, so that one round covers them. */
export function areasDocument(areas: readonly AreaCare[], days: SaidDays): PaperDocument {
  return {
    title: 'Care calendar by area',
    blocks: [...areas.flatMap((area) => areaBlocks(area, days)), cautionsBlock(cautionsOf(siteActs.round))],
  };
}

function areaBlocks({ area, trips }: AreaCare, days: SaidDays): readonly PaperBlock[] {
  return [
    heading(area === '' ? 'Area not written down' : area),
    {
      is: 'table',
      head: ['week of', 'tank', 'what', 'day'],
      rows: trips.flatMap(({ week, visits, calls }) =>
        [...visits, ...calls].map(({ job, title, act, date }) => [
          paperDay(week, days),
          `${job} ${title}`,
          careWords[act] ?? act,
          paperWeekday(date, days),
        ]),
      ),
      groups: 'beside',
      tick: true,
    },
  ];
}
