import { capital } from '#shared-calc/rule/capital.ts';
import type { PaperCaution } from '#shared-calc/papers/document.ts';
import { sayOnPaper } from '#shared-calc/words/say-on-paper.ts';
import { decidedOnPaper } from '#shared-calc/words/who-decides.ts';
import css from './paper.module.css';

interface ListParts {
  readonly cautions: readonly PaperCaution[];
  /** The place on the paper shows what they are about. */
  readonly bare: boolean;
  /** Who decides is said without where it comes from. */
  readonly brief?: boolean;
}

/** Cautions, each with who decides. Neighbours with the same decider name it once. */
export function CautionList({ cautions, bare, brief = false }: ListParts) {
  const said = cautions
    .filter(({ elsewhere }) => !elsewhere)
    .map(({ source, ...caution }) => (source === undefined || brief ? caution : { ...caution, source }));
  if (said.length === 0) return null;
  return (
    <dl class={css['cautions']}>
      {byDecider(said).map(([first, ...more]) => (
        <div key={first.says}>
          {[first, ...more].map(({ about, says }) => (
            <dt key={says}>
              {!bare && about !== '' && <b>{capital(about)}: </b>}
              {sayOnPaper(says)}
            </dt>
          ))}
          <dd>{decidedOnPaper(first)}</dd>
        </div>
      ))}
    </dl>
  );
}

/** Groups neighbours with the same decider and source. */
function byDecider(cautions: readonly PaperCaution[]): readonly (readonly [PaperCaution, ...PaperCaution[]])[] {
  const groups: [PaperCaution, ...PaperCaution[]][] = [];
  for (const each of cautions) {
    const last = groups.at(-1);
    if (last?.[0].decides === each.decides && last[0].source === each.source) last.push(each);
    else groups.push([each]);
  }
  return groups;
}
