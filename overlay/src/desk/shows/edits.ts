import type { ChapterMark } from '../../wireShows.ts';

/** Changes of a list of chapters. Each returns another list, in order, whose first chapter begins at 0. */

export function retitled(marks: readonly ChapterMark[], index: number, title: string): ChapterMark[] {
  return marks.map((mark, place) => (place === index ? { ...mark, title } : mark));
}

/** The first stays where it is, and none passes its neighbours. */
export function moved(
  marks: readonly ChapterMark[],
  index: number,
  at: number,
  length: number,
): ChapterMark[] {
  if (index === 0) return [...marks];
  const least = (marks[index - 1]?.at ?? 0) + 1;
  const most = (marks[index + 1]?.at ?? Math.max(length, least + 1)) - 1;
  const place = Math.min(Math.max(at, least), Math.max(most, least));
  return marks.map((mark, other) => (other === index ? { ...mark, at: place } : mark));
}

/** With the one before it, whose title stays; the first with the one behind it. */
export function merged(marks: readonly ChapterMark[], index: number): ChapterMark[] {
  if (marks.length < 2) return [...marks];
  const gone = index === 0 ? 1 : index;
  return marks.filter((_, place) => place !== gone);
}

/** Into two halves of one title. */
export function split(marks: readonly ChapterMark[], index: number, length: number): ChapterMark[] {
  const mark = marks[index];
  if (!mark) return [...marks];
  const end = marks[index + 1]?.at ?? Math.max(length, mark.at + 2);
  const half = { at: Math.floor((mark.at + end) / 2), title: mark.title };
  return half.at > mark.at ? [...marks.slice(0, index + 1), half, ...marks.slice(index + 1)] : [...marks];
}
