import type { KeyGroup } from '#shared-calc/help/key-groups.ts';
import css from './key-list.module.css';

/** Keys and what they do. */
export function Keys({ keys }: Pick<KeyGroup, 'keys'>) {
  return (
    <dl class={css['keys']}>
      {keys.map(([key, does]) => (
        <div key={`${key} ${does}`}>
          <dt>
            <kbd>{key}</kbd>
          </dt>
          <dd>{does}</dd>
        </div>
      ))}
    </dl>
  );
}
