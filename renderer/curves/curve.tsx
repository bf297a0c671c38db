import { useEffect, useRef } from 'preact/hooks';
import type { CurveSpec } from './curve-spec.ts';
import { drawCurve } from './draw-curve.ts';
import { Plate } from './plate.tsx';
import css from './plate.module.css';

interface CurveParts {
  /** Keep the same object for the same figures: a new object is drawn again. */
  readonly spec: CurveSpec;
  readonly decimalComma: boolean;
}

/** A chart of lines, with its figures. */
export function Curve({ spec, decimalComma }: CurveParts) {
  const host = useRef<HTMLDivElement>(null);
  useEffect(() => (host.current ? drawCurve(host.current, spec, decimalComma) : undefined), [spec, decimalComma]);
  return (
    <Plate title={spec.title} under={spec.under} table={spec.table}>
      <div ref={host} class={css['plot']} role="img" aria-label={spec.label} />
    </Plate>
  );
}
