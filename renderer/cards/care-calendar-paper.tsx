import { Letterhead, Paper } from '#renderer/print/paper.tsx';
import { paperDay, paperWeekday } from '#shared-calc/papers/paper-words.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import type { SizeCare } from '#shared-calc/prepare/size-care.ts';
import { careWords } from '#shared-calc/papers/step-words.ts';
import type { CareDate, CareRound } from '#shared-calc/prepare/care-calendar.ts';
import { cautionsOfAll, roundDays, roundWords } from '#shared-calc/papers/care-paper.ts';
import { CautionList } from './caution-list.tsx';
import { BoxToTick, TickList } from '#renderer/print/box-to-tick.tsx';
import paper from '#renderer/print/paper.module.css';
import css from './care-calendar.module.css';

export interface CareCalendarParts {
  readonly title: string;
  readonly letterhead: readonly string[];
  readonly handover: Day;
  readonly visits: readonly CareDate[];
  readonly sizes: readonly SizeCare[];
  readonly lamps: { readonly from: Day; readonly to: Day } | undefined;
}

/** The first year of a tank: visits, draining and refilling by day, and when the lamps are due. */
export function CareCalendarPaper({ title, letterhead, handover, visits, sizes, lamps }: CareCalendarParts) {
  return (
    <Paper label="Care calendar" foot={`Care calendar, ${title}`} look="large">
      <Letterhead title="Care calendar" who={letterhead.slice(0, 1)} />
      <p>
        {title}. Handed over {paperWeekday(handover)}.
      </p>
      <section class={paper['together']}>
        <h3>We call and visit</h3>
        <TickList>
          {visits.map(({ act, date }) => (
            <li key={date}>
              <BoxToTick /> {paperWeekday(date)}: {careWords[act] ?? act}
            </li>
          ))}
        </TickList>
        {lamps && (
          <p>
            Lamps are due from {paperDay(lamps.from)} to {paperDay(lamps.to)}.
          </p>
        )}
      </section>
      {sizes.map((size) => (
        <section key={size.size}>
          <h3>{`${size.called}, ${size.tank}`}</h3>
          {size.rounds.map((round) => (
            <RoundDays key={round.act} round={round} />
          ))}
          {size.rounds.length === 0 && <p>Nothing collects in it and nothing is misted by a pump.</p>}
        </section>
      ))}
      <CautionList cautions={cautionsOfAll(sizes)} />
    </Paper>
  );
}

function RoundDays({ round }: { readonly round: CareRound }) {
  const { act, says } = round;
  return (
    <div class={css['round']}>
      <p>
        <b>
          {roundWords[act]}, {says}
        </b>
      </p>
      <p class={css['days']}>
        {roundDays(round).map((day) => (
          <span key={day}>
            <BoxToTick /> {paperDay(day)}
          </span>
        ))}
      </p>
    </div>
  );
}
