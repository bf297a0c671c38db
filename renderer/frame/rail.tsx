import { useEffect, useState } from 'preact/hooks';
import type { PlaceEntry, PlaceId } from '#shared-calc/contract/places.ts';
import { placeGroups } from '#shared-calc/contract/places.ts';
import { JobSwitch } from './job-switch.tsx';
import type { JobSwitchView } from './page-view.ts';
import { Button } from '#renderer/kit/button.tsx';
import { actNames } from '#shared-calc/words/act-names.ts';
import { writeRoute } from './place-route.ts';
import css from './rail.module.css';

interface RailView {
  readonly here: PlaceId;
  /** The workshop's name, at the foot. */
  readonly workshop: string;
  /** The open job, at the head of the views that work on it. */
  readonly jobs: JobSwitchView | undefined;
  readonly showHelp: () => void;
}

/** The views at the left, in their groups; the current one is marked. */
export function Rail({ here, workshop, jobs, showHelp }: RailView) {
  const [isOpen, setIsOpen] = useState(false);
  useEffect(() => setIsOpen(false), [here]);
  return (
    <nav class={css['rail']} aria-label="Places" data-open={isOpen ? '' : undefined}>
      <p class={css['name']}>
        <Mark />
        Loamwright
      </p>
      <div class={css['fold']}>
        <Button aria-expanded={isOpen} onClick={() => setIsOpen(!isOpen)}>
          {actNames.places}
        </Button>
      </div>
      {placeGroups.map(({ of, entries }) => (
        <div class={css['group']} key={of}>
          {of === 'job' && jobs && <JobSwitch view={jobs} />}
          <ul>
            {entries.map((entry) => (
              <Entry key={entry.title} entry={entry} here={here} />
            ))}
          </ul>
        </div>
      ))}
      <div class={css['foot']}>
        <Button look="plain" onClick={showHelp}>
          {actNames.help} <kbd>F1</kbd>
        </Button>
        <p class={css['workshop']}>{workshop}</p>
      </div>
    </nav>
  );
}

function Entry({ entry: { title, parts }, here }: { readonly entry: PlaceEntry; readonly here: PlaceId }) {
  const [first] = parts;
  if (!first) return null;
  const isHere = parts.some(({ id }) => id === here);
  return (
    <li>
      <a href={writeRoute(first.id)} aria-current={isHere ? 'page' : undefined}>
        {title}
      </a>
    </li>
  );
}

function Mark() {
  return (
    <svg viewBox="0 0 20 20" aria-hidden="true">
      <path class={css['glass']} d="M2.5 1.5v17h15v-17" />
      <path class={css['litter']} d="M4 9.5h12v2H4z" />
      <path class={css['soil']} d="M4 12h12v3H4z" />
      <path class={css['clay']} d="M4 15.5h12V17H4z" />
    </svg>
  );
}
