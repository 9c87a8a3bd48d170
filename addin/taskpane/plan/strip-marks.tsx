/** Each kind of week by its own shape: a block, a low open block, a diamond, a dash. */
import type { Kind } from "../../../engine/index";

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export function KindMark({ kind, x, y, width, height }: Box & { readonly kind: Kind }) {
  const middle = x + width / 2;
  const base = y + height - 2;
  switch (kind) {
    case "hard":
      return <rect class="mw-mark-hard" x={x + 1} y={y + 3} width={width - 2} height={height - 5} rx={1} />;
    case "deload":
      return <rect class="mw-mark-deload" x={x + 1.5} y={base - 4.5} width={width - 3} height={4} rx={1} />;
    case "meet": {
      const half = Math.min(6, width / 2);
      const centre = y + height / 2;
      return (
        <path
          class="mw-mark-meet"
          d={`M${middle} ${centre - half}l${half} ${half}l${-half} ${half}l${-half} ${-half}z`}
        />
      );
    }
    case "bridge":
      return <line class="mw-strip-bridge" x1={x + 2} x2={x + width - 2} y1={base - 2} y2={base - 2} />;
  }
}

const LEGEND: readonly (readonly [Kind, string])[] = [
  ["hard", "hard"],
  ["deload", "deload"],
  ["meet", "meet week"],
  ["bridge", "bridge"],
];

export function StripLegend({ kinds }: { kinds: ReadonlySet<Kind> }) {
  return (
    <ul class="mw-legend" aria-label="Signs in the strip">
      {LEGEND.filter(([kind]) => kinds.has(kind)).map(([kind, word]) => (
        <li key={kind}>
          <svg width={14} height={14} aria-hidden="true">
            <KindMark kind={kind} x={0} y={0} width={14} height={14} />
          </svg>
          {word}
        </li>
      ))}
    </ul>
  );
}
