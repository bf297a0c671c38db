import type { ComponentChildren } from 'preact';
import { Button } from '#renderer/kit/button.tsx';
import type { PlaceEntry, PlaceId } from '#shared-calc/contract/places.ts';
import type { PlaceAct } from './frame-view.ts';
import { writeRoute } from './place-route.ts';
import { Muted } from '#renderer/kit/muted.tsx';
import css from './place-top.module.css';

interface Top {
  readonly title: string;
  /** Its entry in the rail, which may have more views. */
  readonly entry: PlaceEntry | undefined;
  readonly here: PlaceId;
  /** The current subject of the view: a job's title. */
  readonly about: string;
  readonly aside: string;
  readonly acts: readonly PlaceAct[];
  /** The find field, if the view has one. */
  readonly children?: ComponentChildren;
}

/** The head of a view: its name, its subject, and its acts; the last act is the main one. */
export function PlaceTop({ title, entry, here, about, aside, acts, children }: Top) {
  return (
    <header class={css['top']}>
      <h1 tabIndex={-1}>{title}</h1>
      {entry && entry.parts.length > 1 && <Parts entry={entry} here={here} />}
      <p class={css['about']}>
        {about}
        {about !== '' && aside !== '' && ' '}
        {aside !== '' && <Muted>{aside}</Muted>}
      </p>
      <p class={css['noPaper']}>This page has no paper of its own; it is printed as it is shown.</p>
      {children}
      {acts.map((act) => (
        <Button
          key={act.label}
          look={act.main ? 'main' : 'framed'}
          disabled={act.run === undefined}
          title={act.hint}
          onClick={act.run}
        >
          {act.label}
        </Button>
      ))}
    </header>
  );
}

/** Parts that fit beside the heading; more have a line of their own. */
const BESIDE = 4;

function Parts({ entry: { title, parts }, here }: { readonly entry: PlaceEntry; readonly here: PlaceId }) {
  return (
    <nav class={css['parts']} aria-label={`Parts of ${title}`} data-form={parts.length > BESIDE ? 'line' : undefined}>
      {parts.map(({ id, part }) => (
        <a key={id} href={writeRoute(id)} aria-current={id === here ? 'page' : undefined}>
          {part}
        </a>
      ))}
    </nav>
  );
}
