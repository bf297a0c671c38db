import { signs } from './sign.tsx';
import type { SignName } from './sign.tsx';

interface Drawing {
  /** Stroke width; without one the shape is filled. */
  readonly width?: number;
  readonly dash?: string;
  readonly d: string;
}

const drawings: Readonly<Record<SignName, Drawing>> = {
  fold: { width: 1.5, d: 'M2.5 4.25L6 7.75l3.5-3.5' },
  stop: { d: 'M3.8.5h4.4l3.3 3.3v4.4l-3.3 3.3H3.8L.5 8.2V3.8z' },
  watch: { d: 'M6 1l5.5 10H.5z' },
  advice: { width: 1.75, d: 'M2 6a4 4 0 1 0 8 0a4 4 0 1 0-8 0z' },
  need: { width: 1.5, dash: '2.25 1.5', d: 'M1.5 1.5h9v9h-9z' },
  range: { width: 1.75, d: 'M1.75 1v10M10.25 1v10M4 6h4' },
  wait: {
    width: 1.25,
    d: 'M2.5 1.25h7M2.5 10.75h7M3.5 1.5c0 3 2.5 3 2.5 4.5S3.5 7.5 3.5 10.5M8.5 1.5c0 3-2.5 3-2.5 4.5s2.5 1.5 2.5 4.5',
  },
  old: { width: 1.25, d: 'M1.25 6a4.75 4.75 0 1 0 9.5 0a4.75 4.75 0 1 0-9.5 0zM6 3.25V6l2 1.5' },
  loop: { width: 1.5, d: 'M10.5 6A4.5 4.5 0 1 1 8.6 2.3M8.75.25v2.5h-2.5' },
  issued: { width: 1.5, d: 'M2 5.5h8v5.5H2zM4 5.5V3.5a2 2 0 0 1 4 0v2' },
  find: { width: 1.5, d: 'M1.5 5a3.5 3.5 0 1 0 7 0a3.5 3.5 0 1 0-7 0zM7.75 7.75L11 11' },
  step: { width: 1.5, d: 'M4.25 2.5L7.75 6l-3.5 3.5' },
  measured: { width: 1.25, d: 'M1 3.5h10v5H1zM3.5 3.5v2.5M6 3.5V7M8.5 3.5v2.5' },
  supplier: { width: 1.25, d: 'M1.5 4.5h9v6h-9zM1.5 4.5L3 1.5h6l1.5 3' },
  published: { width: 1.25, d: 'M2 1.25h8v9.5H2zM4 4h4M4 6.25h4' },
  practice: { width: 1.5, d: 'M1.75 6a4.25 4.25 0 1 0 8.5 0a4.25 4.25 0 1 0-8.5 0z' },
  memory: { width: 1.5, dash: '2.2 1.6', d: 'M1.75 6a4.25 4.25 0 1 0 8.5 0a4.25 4.25 0 1 0-8.5 0z' },
  house: { width: 1.25, d: 'M1 6.25L6 1.75l5 4.5M2.5 5.5v5h7v-5' },
  unknown: { width: 1.25, dash: '2 1.4', d: 'M1 6a5 5 0 1 0 10 0a5 5 0 1 0-10 0zM5.5 5.5h1v1h-1z' },
  done: { width: 1.75, d: 'M2 6.5l2.75 2.75L10 3.25' },
  more: { d: 'M1.5 5h2v2h-2zM5 5h2v2H5zM8.5 5h2v2h-2z' },
};

/** The drawings that `Sign` shows; once on a page. */
export function SignDrawings() {
  return (
    <svg width="0" height="0" style={{ position: 'absolute' }} aria-hidden="true" focusable="false">
      {signs.map((name) => (
        <symbol key={name} id={`s-${name}`} viewBox="0 0 12 12">
          <SignDrawing {...drawings[name]} />
        </symbol>
      ))}
    </svg>
  );
}

function SignDrawing({ width, dash, d }: Drawing) {
  if (width === undefined) return <path d={d} fill="currentColor" />;
  return <path d={d} fill="none" stroke="currentColor" stroke-width={width} stroke-dasharray={dash} />;
}
