import { capital } from '#shared-calc/rule/capital.ts';
import type { StepCaution } from '#shared-calc/prepare/cautions.ts';
import type { Reminder } from '#shared-calc/papers/audience-rules.ts';
import { sayUnits } from '#shared-calc/words/say-units.ts';
import { whoDecides } from '#shared-calc/words/who-decides.ts';
import css from '#renderer/print/paper.module.css';

type Said = Pick<StepCaution, 'caution' | 'decides'> & Partial<StepCaution>;

interface ListParts {
  readonly cautions: readonly Said[];
  /** Each caution starts with its subject. */
  readonly named?: boolean;
}

/** Cautions at the step they apply to, each with who decides. Neighbours with the same decider name it once. */
export function CautionList({ cautions, named = false }: ListParts) {
  if (cautions.length === 0) return null;
  return (
    <dl class={css['cautions']}>
      {byDecider(cautions).map(([first, ...more]) => (
        <div key={first.caution}>
          {[first, ...more].map(({ step, caution }) => (
            <dt key={caution}>
              {named && step !== undefined && <b>{capital(step)}: </b>}
              {sayUnits(caution)}
            </dt>
          ))}
          <dd>{whoDecides(first.decides)}.</dd>
        </div>
      ))}
    </dl>
  );
}

/** Groups neighbours with the same decider. */
function byDecider(cautions: readonly Said[]): readonly (readonly [Said, ...Said[]])[] {
  const groups: [Said, ...Said[]][] = [];
  for (const each of cautions) {
    const last = groups.at(-1);
    if (last?.[0].decides === each.decides) last.push(each);
    else groups.push([each]);
  }
  return groups;
}

interface MindedParts extends ListParts {
  readonly cautions: readonly StepCaution[];
  readonly audience: readonly Reminder[];
  readonly protection: readonly Reminder[];
}

/**
 * What to mind. Cautions about people at risk and about trade are listed with who is near this tank and what lives in
 * it.
 */
export function Minded({ cautions, audience, protection, named = false }: MindedParts) {
  const of = (wanted: string) => cautions.filter(({ step }) => step === wanted);
  const others = cautions.filter(({ step }) => step !== 'enquiry' && step !== 'animal choice');
  return (
    <>
      <section>
        <h3>To mind</h3>
        <CautionList cautions={others} named={named} />
      </section>
      <section class={css['together']}>
        <h3>Who is near it</h3>
        <CautionList cautions={[...of('enquiry'), ...audience.map(asCaution)]} />
      </section>
      <section class={css['together']}>
        <h3>Protected kinds</h3>
        <CautionList cautions={[...of('animal choice'), ...protection.map(asCaution)]} />
      </section>
    </>
  );
}

function asCaution({ says, decides }: Reminder): Said {
  return { caution: says, decides };
}
