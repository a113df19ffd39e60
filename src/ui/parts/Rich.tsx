import { createElement, Fragment, type ReactNode } from 'react';
import { Link } from 'wouter';

const MARKS = /\*\*(?<strong>[^*]+)\*\*|\*(?<stressed>[^*]+)\*|\[(?<words>[^\]]+)\]\((?<place>[^)]+)\)/g;

/** A text of ours in which **words** are strong, *words* stressed, and [words](/place) lead to a screen. */
export function Rich({ text }: { text: string }) {
  const parts: ReactNode[] = [];
  let from = 0;
  for (const match of text.matchAll(MARKS)) {
    parts.push(text.slice(from, match.index));
    const { strong, stressed, words, place } = match.groups!;
    if (strong !== undefined) parts.push(<strong>{strong}</strong>);
    else if (stressed !== undefined) parts.push(<em>{stressed}</em>);
    else parts.push(<Link href={place!}>{words}</Link>);
    from = match.index + match[0].length;
  }
  return createElement(Fragment, null, ...parts, text.slice(from));
}
