import type { Rung } from '../../wireLadder.ts';

/** What the ladder calls a rule; the rule itself until the ladder is there. */
export function ruleName(rungs: readonly Rung[] | undefined, rule: string): string {
  return rungs?.find((rung) => rung.rule === rule)?.name ?? rule;
}
