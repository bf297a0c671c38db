import css from './section-drawing.module.css';

/** Patterns of the section drawing; once on every page that draws one. */
export function DrawingPatterns() {
  return (
    <svg width="0" height="0" style={{ position: 'absolute' }} aria-hidden="true" focusable="false">
      <defs>
        <pattern id="pellets" patternUnits="userSpaceOnUse" width="34" height="30">
          <g class={css['pellet']}>
            <circle cx="8.5" cy="7.5" r="7" />
            <circle cx="25.5" cy="7.5" r="7" />
            <circle cx="0" cy="22.5" r="7" />
            <circle cx="17" cy="22.5" r="7" />
            <circle cx="34" cy="22.5" r="7" />
          </g>
        </pattern>
        <pattern id="grains" patternUnits="userSpaceOnUse" width="22" height="14">
          <g class={css['grain']}>
            <circle cx="4" cy="4" r="2.6" />
            <circle cx="13" cy="9" r="2.2" />
            <circle cx="19" cy="3" r="2.4" />
          </g>
        </pattern>
        <pattern id="crumbs" patternUnits="userSpaceOnUse" width="84" height="62">
          <g class={css['fleck']}>
            <path d="M6 12l14 4-2 6-13-4z" />
            <path d="M52 6l12-3 2 6-12 3z" />
            <path d="M30 40l15 2-1 6-15-2z" />
            <path d="M66 44l11-5 3 5-11 6z" />
          </g>
          <g class={css['crumb']}>
            <circle cx="34" cy="14" r="5" />
            <circle cx="74" cy="24" r="4" />
            <circle cx="14" cy="44" r="5" />
            <circle cx="56" cy="28" r="3.5" />
            <circle cx="40" cy="57" r="3" />
          </g>
        </pattern>
        <pattern id="misfit" patternUnits="userSpaceOnUse" width="18" height="18">
          <path class={css['hatch']} d="M-4 4l8-8M0 18L18 0M14 22l8-8" />
        </pattern>
        <linearGradient id="lamplight" x1="0" y1="0" x2="0" y2="1">
          <stop class={css['rayNear']} offset="0" />
          <stop class={css['rayFar']} offset="1" />
        </linearGradient>
      </defs>
    </svg>
  );
}
