import { actNames } from '#shared-calc/words/act-names.ts';
import { Fragment } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { Sign } from '#renderer/frame/sign.tsx';
import type { SignName } from '#renderer/frame/sign.tsx';
import { useKeepFocus } from '#renderer/frame/use-keep-focus.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { CautionParts } from '#renderer/kit/caution.tsx';
import { Figure } from './figure.tsx';
import { HousePart } from './house-part.tsx';
import { OpenCheckPart } from './open-check-part.tsx';
import type { PanelActs, PanelView, StandingView } from './panel-view.ts';
import { RulePart } from './rule-part.tsx';
import { RestsPart } from './rests-part.tsx';
import { WorkingPart } from './working-part.tsx';
import { MutedLine } from '#renderer/kit/muted.tsx';
import { NoteArea } from '#renderer/kit/note-area.tsx';
import { PanelHead, SidePanel } from '#renderer/kit/side-panel.tsx';
import { Standing } from '#renderer/kit/standing.tsx';
import css from './working-panel.module.css';

interface Panel {
  /** `undefined` while no cell is selected. */
  readonly view: PanelView | undefined;
  readonly acts: PanelActs;
}

/** The side panel for one cell: its value, why, and what can be done with it. */
export function WorkingPanel({ view, acts }: Panel) {
  const sidePanel = useRef<HTMLElement>(null);
  const [showsRule, showRule] = useState(false);
  // A step down or up replaces the panel that had the focus.
  useKeepFocus(sidePanel, view?.id, () => sidePanel.current?.focus());
  return (
    <SidePanel panel={sidePanel} look="cell" label="Working panel">
      {view ? (
        <CellWorking key={view.id} view={view} acts={acts} showsRule={showsRule} showRule={showRule} />
      ) : (
        <MutedLine>Choose a box to see its working.</MutedLine>
      )}
    </SidePanel>
  );
}

interface CellParts {
  readonly view: PanelView;
  readonly acts: PanelActs;
  readonly showsRule: boolean;
  readonly showRule: (shows: boolean) => void;
}

function CellWorking({ view, acts, showsRule, showRule }: CellParts) {
  return (
    <>
      <Head view={view} acts={acts} />
      <OpenCheckPart view={view} acts={acts} />
      {view.ranges.length > 0 && <RangePart ranges={view.ranges} />}
      <RulePart view={view} acts={acts} isOpen={showsRule} turn={showRule} />
      {view.house?.canHold === true && (
        <Buttons>
          <Button title="This value for all sizes of the job" onClick={acts.forWholeJob}>
            {actNames.wholeJob}
          </Button>
          <Button title="This value for its tank in every job" onClick={acts.alwaysForTank}>
            {actNames.alwaysForTank}
          </Button>
        </Buttons>
      )}
      <WorkingPart putIn={view.putIn} sources={view.sources} stepDown={acts.stepDown} />
      {view.rests.rows.length > 0 && <RestsPart rests={view.rests} stepDown={acts.stepDown} />}
      {view.house && <HousePart house={view.house} acts={acts} />}
      <CautionParts cautions={view.cautions} />
      {view.note && <NotePart note={view.note} acts={acts} />}
    </>
  );
}

function Head({ view, acts }: { readonly view: PanelView; readonly acts: PanelActs }) {
  const above = view.steppedFrom.at(-1);
  return (
    <PanelHead where={view.where} title={view.title} answer={<Figure of={view.answer} />}>
      {above !== undefined && (
        <p class={css['stepUp']}>
          <Button look="plain" onClick={acts.stepUp}>
            <Sign name="step" />
            up to {above}
          </Button>
        </p>
      )}
      {view.standing.map(({ look, words }) => (
        <Standing key={words} state={look} sign={signOf[look]}>
          <span>{words}</span>
        </Standing>
      ))}
    </PanelHead>
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
        <MutedLine key={each}>{each}</MutedLine>
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
      <NoteArea
        id="note"
        readOnly={note.closed}
        maxLength={2_000}
        defaultValue={note.text}
        onChange={(event) => acts.writeNote(event.currentTarget.value)}
      />
    </section>
  );
}
