import { useEffect, useState } from 'preact/hooks';
import { Button } from '#renderer/kit/button.tsx';
import { MutedLine } from '#renderer/kit/muted.tsx';
import type { CureView, OpenCheckView, PanelActs, PanelView } from './panel-view.ts';
import css from './working-panel.module.css';

interface CheckParts {
  readonly view: PanelView;
  readonly acts: PanelActs;
}

/** A check that does not surely hold: what it says, its figures, who decides, and what would mend it. */
export function OpenCheckPart({ view, acts }: CheckParts) {
  const { check } = view;
  if (!check) return null;
  const { waitsFor, askAt } = check;
  return (
    <section>
      <h3>{headingOf(check)}</h3>
      <p>{check.says}</p>
      {waitsFor && (
        <p>
          <Button look="plain" onClick={() => acts.goTo(waitsFor.line)}>
            Go to {waitsFor.label}
          </Button>
        </p>
      )}
      {check.figures !== '' && <MutedLine>{check.figures}</MutedLine>}
      {check.decides !== '' && <p class={css['decides']}>{check.decides}</p>}
      {askAt && (
        <p>
          <a href={askAt.to}>{askAt.says}</a>
        </p>
      )}
      {check.hasCures && <Cures view={view} acts={acts} />}
    </section>
  );
}

function headingOf({ waitsFor, isUnknown = false }: OpenCheckView): string {
  if (waitsFor) return 'What it waits for';
  return isUnknown ? 'What is not known yet' : 'What does not hold';
}

/** Worked again whenever the panel changes, after it is painted. */
function Cures({ view, acts }: CheckParts) {
  const [cures, setCures] = useState<readonly CureView[]>();
  useEffect(() => {
    setCures(undefined);
    return acts.workCures(setCures);
  }, [view]);
  return (
    <div role="status" aria-label="What would mend it" class={css['cures']}>
      {cures === undefined && <MutedLine>What would mend it: working it out.</MutedLine>}
      {cures?.length === 0 && <MutedLine>None of the usual changes would mend it.</MutedLine>}
      {cures?.map((cure) => (
        <p key={cure.says}>
          {cure.says}{' '}
          <Button look="plain" onClick={() => acts.takeCure(cure)}>
            Take it
          </Button>
        </p>
      ))}
    </div>
  );
}
