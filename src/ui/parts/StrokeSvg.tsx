import { useMemo } from 'react';

interface Props {
  /** SVG elements made by src/picture, which draws everything that page and command share. */
  readonly svg: string;
  readonly viewBox: string;
  readonly className?: string;
}

/** Shows drawn strokes; hidden from screen readers, which get words beside it. */
export function StrokeSvg({ svg, viewBox, className }: Props) {
  const inner = useMemo(() => ({ __html: svg }), [svg]);
  return (
    <svg
      className={className}
      viewBox={viewBox}
      fill="none"
      strokeLinejoin="round"
      strokeLinecap="round"
      aria-hidden="true"
      focusable="false"
      // biome-ignore lint/security/noDangerouslySetInnerHtml: drawn by src/picture from numbers, never from a person's text
      dangerouslySetInnerHTML={inner}
    />
  );
}
