import { shownUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { useMemo, useState } from 'preact/hooks';
import { TextField, Fields } from '#renderer/kit/field.tsx';
import { Curve } from '#renderer/curves/curve.tsx';
import { watchSpecs } from '#renderer/curves/watch-spec.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Fault } from '#renderer/kit/note.tsx';
import type { SaidDays } from '#shared-calc/prepare/say-day.ts';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import { sayUnits } from '#shared-calc/words/say-units.ts';
import type { LogFault } from '#shared-calc/prepare/log-rows.ts';
import { sayWatch, watchReport, type WatchBand } from '#shared-calc/prepare/watch.ts';
import { readWatchLog, type WatchReading } from '#shared-calc/prepare/watch-log.ts';
import type { Result } from '#shared-calc/result.ts';
import { bandFields, bandKeys, bandTexts, readBand, type BandTexts } from './band-texts.ts';
import type { PartView } from './part-view.ts';
import type { WatchedSize } from '#shared-calc/prepare/watched-sizes.ts';
import { savedWatch, type SavedWatch } from '#shared-calc/prepare/saved-watch.ts';
import css from './prepare.module.css';
import { MutedLine } from '#renderer/kit/muted.tsx';
import { NoteArea } from '#renderer/kit/note-area.tsx';

interface ReadingsParts {
  readonly view: PartView;
  readonly size: WatchedSize;
}

type Log = Result<readonly WatchReading[], readonly LogFault[]> | undefined;

/** The watch of one size: its band, its readings typed or pasted, what they show, and who signs them. */
export function Readings({ view: { state, context, job }, size }: ReadingsParts) {
  const saved = savedWatch(context.records, size.id);
  const { decimalComma } = context.workshop;
  const [text, setText] = useState(() => saved?.text ?? '');
  const [by, setBy] = useState(() => saved?.by ?? '');
  const [texts, setTexts] = useState(() => bandTexts(size.band, decimalComma));
  const [wrong, setWrong] = useState<string>();
  const band = readBand(texts, decimalComma);
  const log: Log = useMemo(() => (text.trim() === '' ? undefined : readWatchLog(text)), [text]);
  const keep = () => {
    if (!job || !log?.ok || !band.ok) return setWrong('There is nothing to keep yet.');
    return setWrong(state.api.doAct('keepWatch', { job: job.id, column: size.key, readings: text, by }));
  };
  return (
    <section>
      <h2>Readings of {size.called}</h2>
      <MutedLine>{keptWords(saved, context.display)}</MutedLine>
      <BandEntries texts={texts} set={setTexts} by={by} sign={setBy} />
      <label class={css['log']}>
        {shownUnit('degC', context.display) === 'degF'
          ? 'Readings: time, temperature and humidity, a row a reading, as 14:30 76F 85; then the room if read, as 70F 45. A temperature without F is °C'
          : 'Readings: time, °C and humidity, a row a reading, as 14:30 24.5 85; then the room if read, as 21 45'}
        <NoteArea
          look="log"
          rows={8}
          value={text}
          onInput={(event) => setText(event.currentTarget.value)}
          spellcheck={false}
        />
      </label>
      <Buttons>
        <Button look="main" onClick={keep}>
          Keep and sign
        </Button>
      </Buttons>
      <Wrong says={[wrong, band.ok ? undefined : band.fault, ...logFaults(log)]} />
      {log?.ok && band.ok && <Report readings={log.value} band={band.value} display={context.display} />}
    </section>
  );
}

function keptWords(kept: SavedWatch | undefined, days: SaidDays): string {
  return kept ? `Kept on ${paperDay(kept.on, days)}, signed by ${kept.by}.` : 'None kept yet.';
}

const MOST_FAULTS = 8;

function logFaults(log: Log): readonly string[] {
  return log === undefined || log.ok
    ? []
    : log.fault.slice(0, MOST_FAULTS).map(({ row, says }) => `Row ${row}: ${says}`);
}

function Wrong({ says }: { readonly says: readonly (string | undefined)[] }) {
  const wrong = says.filter((each) => each !== undefined);
  if (wrong.length === 0) return null;
  return (
    <div>
      {wrong.map((sentence) => (
        <Fault key={sentence}>{sentence}</Fault>
      ))}
    </div>
  );
}

interface BandParts {
  readonly texts: BandTexts;
  readonly set: (texts: BandTexts) => void;
  readonly by: string;
  readonly sign: (by: string) => void;
}

function BandEntries({ texts, set, by, sign }: BandParts) {
  return (
    <Fields>
      {bandKeys.map((key) => (
        <TextField
          key={key}
          label={`${bandFields[key].name} in the band`}
          unit={bandFields[key].stored === '%' ? '%' : '°C'}
          figure
          text={texts[key]}
          typing={(typed) => set({ ...texts, [key]: typed })}
        />
      ))}
      <TextField label="Signed by" text={by} typing={sign} />
    </Fields>
  );
}

interface ReportParts {
  readonly readings: readonly WatchReading[];
  readonly band: WatchBand;
  readonly display: Display;
}

function Report({ readings, band, display }: ReportParts) {
  const says = sayWatch(watchReport(readings, band), band, display);
  const bandKey = Object.values(band).join();
  const specs = useMemo(() => watchSpecs(readings, band, display), [readings, bandKey, display]);
  return (
    <>
      <div class={css['pressing']} role="status">
        {says.map((sentence) => (
          <p key={sentence}>{sayUnits(sentence)}</p>
        ))}
      </div>
      <div class={css['plates']}>
        {specs.map((spec) => (
          <Curve key={spec.up.unit} spec={spec} decimalComma={display.decimalComma === true} />
        ))}
      </div>
    </>
  );
}
