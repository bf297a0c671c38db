import { actNames } from '#shared-calc/words/act-names.ts';
import type { ReadonlySignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Button } from '#renderer/kit/button.tsx';
import { isUnkept } from '#renderer/kit/unkept.tsx';
import type { QuietLineActs, QuietLineView } from './frame-view.ts';
import css from './quiet-line.module.css';

interface QuietLineParts {
  readonly view: ReadonlySignal<QuietLineView>;
  readonly acts: QuietLineActs;
  readonly keys: readonly (readonly [key: string, does: string])[];
}

/** What is saved, what *Undo* reverts, the last message, and the keys of the view. */
export function QuietLine({ view: { value: view }, acts, keys }: QuietLineParts) {
  useEffect(() => markUnkept(view.trouble !== undefined), [view.trouble !== undefined]);
  return (
    <footer class={css['line']} data-trouble={view.trouble ? '' : undefined}>
      <span role="status">{view.saved}</span>
      <Step act={actNames.undo} does={view.undo} run={acts.undo} />
      <Step act={actNames.redo} does={view.redo} run={acts.redo} />
      <span class={css['said']} data-refused={view.said?.refused === true ? '' : undefined} role="alert">
        {view.said?.words}
      </span>
      <span class={css['moved']} role="status" aria-label="What the last edit moved">
        {view.moved}
      </span>
      {view.trouble && (
        <span class={css['trouble']} role="alert">
          {view.trouble.says}
          {view.trouble.act && <Button onClick={view.trouble.act.run}>{view.trouble.act.label}</Button>}
        </span>
      )}
      <span class={css['keys']}>
        {keys.map(([key, does]) => (
          <span key={key}>
            <kbd>{key}</kbd> {does}
          </span>
        ))}
      </span>
    </footer>
  );
}

/** Nothing on the page looks as if it were kept while it is not. */
function markUnkept(is: boolean): void {
  isUnkept.value = is;
  document.documentElement.toggleAttribute('data-unkept', is);
}

function Step({
  act,
  does,
  run,
}: {
  readonly act: string;
  readonly does: string | undefined;
  readonly run: () => void;
}) {
  if (does === undefined) return <span>Nothing to {act.toLowerCase()}</span>;
  return (
    <span>
      <Button look="plain" onClick={run}>
        {act}
      </Button>{' '}
      {does}
    </span>
  );
}
