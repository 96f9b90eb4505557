import type { RefObject } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { useDesk } from '../context.ts';

/** What the arrow keys stop at. */
export const stop = 'data-stop';

/**
 * Where the focus is in the run sheet: at the step that comes now when somebody goes there, one control on by an arrow key, where it was
 * before when the sheet closes. Whoever only looks sees the way move on with the step that comes now.
 * @param now Its number, or null where there is none.
 * @returns What hears the keys of the way.
 */
export function useSheetFocus(
  area: RefObject<HTMLElement | null>,
  way: RefObject<HTMLElement | null>,
  now: number | null,
): (event: KeyboardEvent) => void {
  const { plan } = useDesk();
  const visits = plan.visits.value;
  const cameFrom = useRef<Element | null>(null);
  const isIn = () => area.current?.contains(document.activeElement) ?? false;
  const wasIn = isIn();
  const goNow = () => {
    const row = nowIn(way.current);
    showFirst(way.current, row);
    (row?.querySelector<HTMLElement>(`[${stop}]`) ?? area.current)?.focus();
  };

  // Before the next key comes: it would be heard by what had the focus before.
  useLayoutEffect(() => {
    if (visits === 0) return;
    if (!isIn()) cameFrom.current = document.activeElement;
    goNow();
  }, [visits]);

  useLayoutEffect(() => {
    // A step that was done, or is not on the way any more, takes the focus with it.
    if (wasIn && document.activeElement === document.body) goNow();
  });

  useLayoutEffect(() => {
    if (!isIn()) showFirst(way.current, nowIn(way.current));
  }, [now]);

  useLayoutEffect(
    () => () => {
      if (isIn()) before(cameFrom.current)?.focus();
    },
    [],
  );

  return (event) => {
    const isDown = event.key === 'ArrowDown';
    if ((!isDown && event.key !== 'ArrowUp') || !way.current || !(event.target instanceof Element)) return;
    if (event.target.matches('input, select')) return;
    event.preventDefault();
    nextStop(way.current, event.target, isDown)?.focus();
  };
}

function nowIn(way: Element | null): HTMLElement | null {
  return way?.querySelector<HTMLElement>('[aria-current="step"]') ?? null;
}

/** Scrolls the way alone: where the desk is narrow the page scrolls too, and must not jump. */
function showFirst(way: Element | null, row: Element | null): void {
  if (!way || !row) return;
  const heading = row.closest('details')?.querySelector('summary') ?? row;
  way.scrollTop += heading.getBoundingClientRect().top - way.getBoundingClientRect().top;
}

function nextStop(way: Element, from: Element, isDown: boolean): HTMLElement | undefined {
  const side = isDown ? Node.DOCUMENT_POSITION_FOLLOWING : Node.DOCUMENT_POSITION_PRECEDING;
  const beyond = [...way.querySelectorAll<HTMLElement>(`[${stop}]`)].filter(
    (each) => isInSight(each) && (from.compareDocumentPosition(each) & side) !== 0,
  );
  return isDown ? beyond[0] : beyond.at(-1);
}

const isInSight = (each: Element) => each.matches('summary') || !each.closest('details:not([open])');

/** Whatever had the focus before, or the cursor of the board. */
function before(cameFrom: Element | null): HTMLElement | null {
  if (cameFrom instanceof HTMLElement && cameFrom.isConnected && cameFrom !== document.body) return cameFrom;
  return document.querySelector<HTMLElement>('[role="grid"] [tabindex="0"]');
}
