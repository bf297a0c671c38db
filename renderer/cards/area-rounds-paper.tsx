import { Letterhead, Paper } from '#renderer/print/paper.tsx';
import { paperDay, paperWeekday } from '#shared-calc/papers/paper-words.ts';
import type { AreaCare, AreaVisit } from '#shared-calc/prepare/size-care.ts';
import { careWords } from '#shared-calc/papers/step-words.ts';
import { cautionsOf } from '#shared-calc/prepare/step-cautions.ts';
import { CautionList } from './caution-list.tsx';
import { Tick } from './tick.tsx';
import { WideTable } from './wide-table.tsx';
import './cards.css';

export interface AreaRoundsParts {
  readonly letterhead: readonly string[];
  readonly areas: readonly AreaCare[];
}

/** Visits of all tanks that stand with clients, by area and week: what is driven in one round. */
export function AreaRoundsPaper({ letterhead, areas }: AreaRoundsParts) {
  return (
    <Paper label="Care calendar by area" foot="Care calendar by area" look="large">
      <Letterhead title="Care calendar by area" who={letterhead.slice(0, 1)} />
      {areas.map(({ area, trips }) => (
        <section key={area}>
          <h3>{area === '' ? 'Area not written down' : area}</h3>
          <WideTable label="Visits">
            <table class="paper-lines">
              <thead>
                <tr>
                  <th scope="col">Week of</th>
                  <th scope="col">One round</th>
                  <th scope="col">By telephone</th>
                </tr>
              </thead>
              <tbody>
                {trips.map(({ week, visits, calls }) => (
                  <tr key={week}>
                    <th scope="row">{paperDay(week)}</th>
                    <td>
                      <VisitList visits={visits} />
                    </td>
                    <td>
                      <VisitList visits={calls} />
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </WideTable>
        </section>
      ))}
      <CautionList cautions={cautionsOf(['service', 'hands', 'transport'])} />
    </Paper>
  );
}

function VisitList({ visits }: { readonly visits: readonly AreaVisit[] }) {
  if (visits.length === 0) return null;
  return (
    <ul class="ticked">
      {visits.map(({ job, title, act, date }) => (
        <li key={`${job} ${date}`}>
          <Tick /> {job} {title}: {careWords[act] ?? act}
          <small> {paperWeekday(date)}</small>
        </li>
      ))}
    </ul>
  );
}
