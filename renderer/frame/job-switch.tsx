import { useRef, useState } from 'preact/hooks';
import { Muted } from '#renderer/kit/muted.tsx';
import { Unseen } from '#renderer/kit/unseen.tsx';
import { walkLinks } from '#renderer/kit/walk-links.ts';
import css from './job-switch.module.css';
import type { JobSwitchView, ListedJob } from './page-view.ts';
import { Sign } from './sign.tsx';
import { useOwnId } from './use-own-id.ts';

/** The open job, with a list to take another: arrows walk it, Enter takes a job, Escape closes it. */
export function JobSwitch({ view }: { readonly view: JobSwitchView }) {
  const id = useOwnId();
  const list = useRef<HTMLDivElement>(null);
  const [jobs, setJobs] = useState<readonly ListedJob[]>([]);
  const open = view.open.value;
  const take = (job: string) => {
    list.current?.hidePopover();
    view.take(job);
  };
  return (
    <>
      <button
        class={css['switch']}
        type="button"
        popovertarget={id}
        onClick={(event) => placeUnder(event, list.current)}
      >
        <small>
          {open?.id ?? 'Job'} <Unseen>{open ? 'is open. Take another job.' : ''}</Unseen>
        </small>
        <b>{open?.title ?? 'none is open'}</b>
        <Sign name="fold" />
      </button>
      <div
        id={id}
        ref={list}
        class={css['list']}
        popover="auto"
        onToggle={({ newState }) => setJobs(newState === 'open' ? view.list() : [])}
      >
        {jobs.length > 0 && <Jobs jobs={jobs} open={open?.id} take={take} />}
      </div>
    </>
  );
}

interface JobsParts {
  readonly jobs: readonly ListedJob[];
  readonly open: string | undefined;
  readonly take: (job: string) => void;
}

function Jobs({ jobs, open, take }: JobsParts) {
  const focusFirst = (button: HTMLButtonElement | null) => button?.focus();
  const first = jobs.some(({ id }) => id === open) ? open : jobs[0]?.id;
  return (
    <ul aria-label="Jobs to take" onKeyDown={walkLinks}>
      {jobs.map(({ id, title, state }) => (
        <li key={id}>
          <button
            type="button"
            data-walk
            ref={id === first ? focusFirst : null}
            aria-current={id === open ? 'true' : undefined}
            onClick={() => take(id)}
          >
            <b>{id}</b> {title} <Muted small>{state}</Muted>
          </button>
        </li>
      ))}
    </ul>
  );
}

/** The list opens under its button; it scrolls where the window is too low for it. */
function placeUnder({ currentTarget: button }: Event, list: HTMLElement | null): void {
  if (!(button instanceof HTMLElement) || !list) return;
  const { left, bottom } = button.getBoundingClientRect();
  list.style.top = `${bottom + 2}px`;
  list.style.left = `${left}px`;
  list.style.maxHeight = `${Math.max(LEAST_HEIGHT, window.innerHeight - bottom - 10)}px`;
}

/** Height of the list in a low window, px. */
const LEAST_HEIGHT = 120;
