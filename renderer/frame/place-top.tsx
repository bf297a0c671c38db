import type { ComponentChildren } from 'preact';
import { Button } from '#renderer/kit/button.tsx';
import type { PlaceAct } from './frame-view.ts';
import { Muted } from '#renderer/kit/muted.tsx';
import css from './place-top.module.css';

interface Top {
  readonly title: string;
  /** The current subject of the view: a job's title. */
  readonly about: string;
  readonly aside: string;
  readonly acts: readonly PlaceAct[];
  /** The find field, if the view has one. */
  readonly children?: ComponentChildren;
}

/** The head of a view: its name, its subject, and its acts; the last act is the main one. */
export function PlaceTop({ title, about, aside, acts, children }: Top) {
  return (
    <header class={css['top']}>
      <h1 tabIndex={-1}>{title}</h1>
      <p class={css['about']}>
        {about}
        {about !== '' && aside !== '' && ' '}
        {aside !== '' && <Muted>{aside}</Muted>}
      </p>
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
