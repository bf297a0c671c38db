import { placeGroups } from '#shared-calc/contract/places.ts';
import type { PlaceId } from '#shared-calc/contract/places.ts';
import { writeRoute } from './place-route.ts';
import css from './rail.module.css';

interface RailView {
  readonly here: PlaceId;
  /** The workshop's name, at the foot. */
  readonly workshop: string;
}

/** The views at the left; the current one is marked. */
export function Rail({ here, workshop }: RailView) {
  return (
    <nav class={css['rail']} aria-label="Places">
      <p class={css['name']}>
        <Mark />
        Loamwright
      </p>
      {placeGroups.map((group) => (
        <ul key={group[0].id}>
          {group.map(({ id, title }) => (
            <li key={id}>
              <a href={writeRoute(id)} aria-current={id === here ? 'page' : undefined}>
                {title}
              </a>
            </li>
          ))}
        </ul>
      ))}
      <p class={css['workshop']}>{workshop}</p>
    </nav>
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
