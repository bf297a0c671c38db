import { Button } from '#renderer/kit/button.tsx';
import { closeMenu } from '#renderer/kit/menu.tsx';
import type { BenchActs } from './bench-acts.ts';
import type { HeadView } from './view-model.ts';
import css from './head-card.module.css';

interface SizeNameParts {
  readonly head: HeadView;
  readonly acts: Pick<BenchActs, 'nameSize'>;
}

/** Names a size within this job, from the size's menu. A refused name stays in the field, with the reason below. */
export function SizeName({ head, acts }: SizeNameParts) {
  const own = head.label === head.key ? '' : head.label;
  return (
    <form class={css['sizeName']} onSubmit={(event) => settle(event, head, acts)}>
      <label>
        Called{' '}
        <input
          key={own}
          class={css['well']}
          type="text"
          name="called"
          defaultValue={own}
          placeholder={head.key}
          autocomplete="off"
          aria-label={`What ${head.label} is called`}
        />
      </label>
      <Button look="plain" type="submit">
        Call it so
      </Button>
    </form>
  );
}

function settle(event: SubmitEvent, head: HeadView, acts: SizeNameParts['acts']): void {
  event.preventDefault();
  const form = event.currentTarget;
  if (!(form instanceof HTMLFormElement)) return;
  const called = new FormData(form).get('called');
  if (typeof called !== 'string' || acts.nameSize(head.key, called) !== undefined) return;
  closeMenu(form);
}
