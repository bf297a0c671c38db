import { writeRoute } from '#renderer/frame/place-route.ts';
import { walkLinks } from '#renderer/kit/walk-links.ts';
import { cardKinds } from './card-kinds.ts';
import type { PartView } from './part-view.ts';
import { writeCards } from '#renderer/frame/prepare-route.ts';
import css from './prepare.module.css';
import { Muted } from '#renderer/kit/muted.tsx';

/** Every printed card, in order of use. */
export function CardsPart({ job }: PartView) {
  return (
    <section class={css['cardList']}>
      <h2>In order of use</h2>
      <ul onKeyDown={walkLinks}>
        {cardKinds.map(({ id, title, says, ofJob }) => (
          <li key={id}>
            {ofJob && !job ? (
              <Muted>
                <b>{title}</b> {says} Open a job first.
              </Muted>
            ) : (
              <a href={writeCards(job?.id, id)}>
                <b>{title}</b> <Muted>{says}</Muted>
              </a>
            )}
          </li>
        ))}
        {job && (
          <li>
            <a href={writeRoute('jobs', job.id, 'pick-list')}>
              <b>Pick list</b> <Muted>What to have ready on build day, from where and by whom.</Muted>
            </a>
          </li>
        )}
      </ul>
    </section>
  );
}
