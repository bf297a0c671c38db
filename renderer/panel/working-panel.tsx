import { Fragment } from 'preact';
import { useRef } from 'preact/hooks';
import { Sign } from '#renderer/frame/sign.tsx';
import type { SignName } from '#renderer/frame/sign.tsx';
import { useKeepFocus } from '#renderer/frame/use-keep-focus.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { CautionPart } from '#renderer/kit/caution.tsx';
import { RuleField } from '#renderer/writing/rule-field.tsx';
import { Figure } from './figure.tsx';
import { HousePart } from './house-part.tsx';
import type { PanelActs, PanelView, StandingView } from './panel-view.ts';
import { WorkingPart } from './working-part.tsx';

interface Panel {
  /** `undefined` while no cell is selected. */
  readonly view: PanelView | undefined;
  readonly acts: PanelActs;
}

/** The side panel for one cell: its value, why, and what can be done with it. */
export function WorkingPanel({ view, acts }: Panel) {
  const sidePanel = useRef<HTMLElement>(null);
  // A step down or up replaces the panel that had the focus.
  useKeepFocus(sidePanel, view?.id, () => sidePanel.current?.focus());
  return (
    <aside ref={sidePanel} class="side-panel" aria-label="Working panel" id="side-panel" tabIndex={-1}>
      {view ? (
        <SidePanel key={view.id} view={view} acts={acts} />
      ) : (
        <p class="aside">Choose a box to see its working.</p>
      )}
    </aside>
  );
}

function SidePanel({ view, acts }: { readonly view: PanelView; readonly acts: PanelActs }) {
  return (
    <>
      <PanelHead view={view} acts={acts} />
      {view.ranges.length > 0 && <RangePart ranges={view.ranges} />}
      {view.rule && (
        <section>
          <h3>{view.rule.kind}</h3>
          <RuleField
            text={view.rule.text}
            label={`${view.rule.kind} of ${view.title}, ${view.where}`}
            help={acts.help}
            settle={acts.write}
            cancel={acts.leave}
            form="panel"
            readOnly={view.rule.closed}
          />
          {view.house?.canHold === true && (
            <Buttons apart>
              <Button title="This value for all sizes of the job" onClick={acts.forWholeJob}>
                For the whole job
              </Button>
            </Buttons>
          )}
        </section>
      )}
      <WorkingPart putIn={view.putIn} sources={view.sources} stepDown={acts.stepDown} />
      {view.house && <HousePart house={view.house} acts={acts} />}
      {view.caution && <CautionPart decides={view.caution.decides}>{view.caution.words}</CautionPart>}
      {view.note && <NotePart note={view.note} acts={acts} />}
    </>
  );
}

function PanelHead({ view, acts }: { readonly view: PanelView; readonly acts: PanelActs }) {
  const above = view.steppedFrom.at(-1);
  return (
    <header>
      <p class="where">{view.where}</p>
      <h2>{view.title}</h2>
      <p class="answer">
        <Figure of={view.answer} />
      </p>
      {view.nameInRules !== '' && (
        <p class="name-in-rules">
          <code>{view.nameInRules}</code>
        </p>
      )}
      {above !== undefined && (
        <p class="step-up">
          <Button look="plain" onClick={acts.stepUp}>
            <Sign name="step" />
            up to {above}
          </Button>
        </p>
      )}
      {view.standing.map((standing) => (
        <Standing key={standing.words} standing={standing} />
      ))}
    </header>
  );
}

const signOf: Readonly<Partial<Record<StandingView['look'], SignName>>> = {
  needs: 'need',
  range: 'range',
  waiting: 'wait',
  loop: 'loop',
  old: 'old',
  issued: 'issued',
  stop: 'stop',
  watch: 'watch',
  advice: 'advice',
};

function Standing({ standing: { look, words } }: { readonly standing: StandingView }) {
  const sign = signOf[look];
  return (
    <p class="standing" data-state={look}>
      {look === 'local' && <span class="notch" aria-hidden="true" />}
      {sign && <Sign name={sign} />}
      <span>{words}</span>
    </p>
  );
}

function RangePart({ ranges }: Pick<PanelView, 'ranges'>) {
  const limits = new Set(ranges.map((each) => each.limits));
  return (
    <section>
      <h3>Range</h3>
      {ranges.map(({ range, ends }) => (
        <Fragment key={range}>
          <p>{range}</p>
          {ends.map((end) => (
            <p key={end}>{end}</p>
          ))}
        </Fragment>
      ))}
      {[...limits].map((each) => (
        <p key={each} class="aside">
          {each}
        </p>
      ))}
    </section>
  );
}

function NotePart({ note, acts }: { readonly note: NonNullable<PanelView['note']>; readonly acts: PanelActs }) {
  return (
    <section>
      <h3>
        <label for="note">Note</label>
      </h3>
      <textarea
        id="note"
        class="well note"
        rows={1}
        readOnly={note.closed}
        maxLength={2_000}
        defaultValue={note.text}
        onChange={(event) => acts.writeNote(event.currentTarget.value)}
      />
    </section>
  );
}
