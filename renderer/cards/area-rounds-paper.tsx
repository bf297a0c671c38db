import { Table } from '#renderer/kit/table.tsx';
import { Letterhead, Paper } from '#renderer/print/paper.tsx';
import { paperDay, paperWeekday } from '#shared-calc/papers/paper-words.ts';
import type { AreaCare, AreaVisit } from '#shared-calc/prepare/size-care.ts';
import { careWords } from '#shared-calc/papers/step-words.ts';
import { cautionsOf } from '#shared-calc/prepare/step-cautions.ts';
import { CautionList } from './caution-list.tsx';
import { BoxToTick, TickList } from '#renderer/print/box-to-tick.tsx';

export interface AreaRoundsParts {
  readonly letterhead: readonly string[];
  readonly areas: readonly AreaCare[];
}

/** Visits to all tanks at clients, by area and week, so that one round covers them. */
export function AreaRoundsPaper({ letterhead, areas }: AreaRoundsParts) {
  return (
    <Paper label="Care calendar by area" foot="Care calendar by area" look="large">
      <Letterhead title="Care calendar by area" who={letterhead.slice(0, 1)} />
      {areas.map(({ area, trips }) => (
        <section key={area}>
          <h3>{area === '' ? 'Area not written down' : area}</h3>
          <Table
            look="paper"
            scroll="Visits"
            rows={trips}
            keyOf={({ week }) => week}
            columns={[
              { head: 'Week of', names: true, cell: ({ week }) => paperDay(week) },
              { head: 'One round', cell: ({ visits }) => <VisitList visits={visits} /> },
              { head: 'By telephone', cell: ({ calls }) => <VisitList visits={calls} /> },
            ]}
          />
        </section>
      ))}
      <CautionList cautions={cautionsOf(['service', 'hands', 'transport'])} />
    </Paper>
  );
}

function VisitList({ visits }: { readonly visits: readonly AreaVisit[] }) {
  if (visits.length === 0) return null;
  return (
    <TickList>
      {visits.map(({ job, title, act, date }) => (
        <li key={`${job} ${date}`}>
          <BoxToTick /> {job} {title}: {careWords[act] ?? act}
          <small> {paperWeekday(date)}</small>
        </li>
      ))}
    </TickList>
  );
}
