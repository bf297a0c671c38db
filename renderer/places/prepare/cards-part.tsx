import { writeRoute } from '#renderer/frame/place-route.ts';
import { walkLinks } from '#renderer/kit/walk-links.ts';
import { cardKinds } from './card-kinds.ts';
import type { PartView } from './part-view.ts';
import { writePrepare } from '#renderer/frame/prepare-route.ts';
import css from './prepare.module.css';

/** Every printed card, in order of use. */
export function CardsPart({ job }: PartView) {
  return (
    <section class={css['cardList']}>
      <h2>In order of use</h2>
      <ul onKeyDown={walkLinks}>
        {cardKinds.map(({ id, title, says, ofJob }) => (
          <li key={id}>
            {ofJob && !job ? (
              <span class="aside">
                <b>{title}</b> {says} Open a job first.
              </span>
            ) : (
              <a href={writePrepare(job?.id, 'cards', id)}>
                <b>{title}</b> <span class="aside">{says}</span>
              </a>
            )}
          </li>
        ))}
        {job && (
          <li>
            <a href={writeRoute('jobs', job.id, 'pick-list')}>
              <b>Pick list</b> <span class="aside">What to have ready on build day, from where and by whom.</span>
            </a>
          </li>
        )}
      </ul>
    </section>
  );
}
