import { goTo } from '#renderer/frame/go-to.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { contextMenuOf, type EntryMenu } from '#renderer/kit/context-menu.tsx';
import { Flag } from '#renderer/kit/flag.tsx';
import type { PlaceId } from '#shared-calc/contract/places.ts';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import type { SaidDays } from '#shared-calc/prepare/say-day.ts';
import type { BoardGroup, BoardRow } from '#shared-calc/derive/job-board.ts';
import { upperFirst } from '#shared-calc/derive/today-next.ts';
import { walkLinks } from '#renderer/kit/walk-links.ts';
import css from './jobs.module.css';
import { Muted } from '#renderer/kit/muted.tsx';

interface BoardParts {
  readonly groups: readonly BoardGroup[];
  readonly open: string | undefined;
  /** The groups are the states themselves. */
  readonly byState: boolean;
  readonly days: SaidDays;
}

/** All jobs, by state or by the day of what is next; the open job is marked. */
export function Board({ groups, open, byState, days }: BoardParts) {
  return (
    <nav class={css['board']} aria-label="Jobs" onKeyDown={walkLinks}>
      {groups.map(({ title, rows }) => (
        <section key={title}>
          <h2>
            {title} <Muted small>{rows.length}</Muted>
          </h2>
          <ul>
            {rows.map((row) => (
              <li key={row.job.id} {...contextMenuOf(() => jobMenu(row.job))}>
                <JobLink row={row} days={days} isOpen={row.job.id === open} state={byState ? '' : row.job.state} />
              </li>
            ))}
          </ul>
        </section>
      ))}
    </nav>
  );
}

/** The places of a job. */
function jobMenu({ id, title }: BoardRow['job']): EntryMenu {
  const to = (says: string, place: PlaceId) => goTo(says, place, id);
  return {
    label: `${id} ${title}`,
    acts: [to('Open the job', 'jobs'), to('Size bench', 'bench'), to('Quote', 'quotes'), to('Needs', 'needs')],
  };
}

interface LinkParts {
  readonly row: BoardRow;
  readonly days: SaidDays;
  readonly isOpen: boolean;
  readonly state: string;
}

function JobLink({ row: { job, sizes, next, on, late, gateOpen }, isOpen, state, days }: LinkParts) {
  const { id, title, client, handover } = job;
  return (
    <a href={writeRoute('jobs', id)} aria-current={isOpen ? 'true' : undefined}>
      <span>
        <b>{id}</b> {title}
        {isOpen && <Muted small> open</Muted>}
      </span>
      <Muted small>
        {[client, sizes, state].filter((part) => part !== '').join(' · ')}
        {handover !== undefined && ` · handover ${paperDay(handover, days)}`}
      </Muted>
      {next !== '' && (
        <span class={css['next']}>
          {upperFirst(next)}
          {on !== undefined && `, by ${paperDay(on, days)}`}
          {late && (
            <Flag state="watch" sign="watch">
              late
            </Flag>
          )}
        </span>
      )}
      {gateOpen && job.state === 'deposit in' && <Muted small>The shopping run may take it.</Muted>}
    </a>
  );
}
