import type { OpenDeduction } from '../../wire.ts';

/** The deductions of one rule, in the order in which they were found. */
export interface RuleGroup {
  rule: string;
  name: string;
  deductions: OpenDeduction[];
}

/** Deductions by rule. They come in ladder order, and so do the groups. */
export function groupByRule(deductions: readonly OpenDeduction[]): RuleGroup[] {
  const groups = new Map<string, RuleGroup>();
  for (const deduction of deductions) {
    const { rule, name } = deduction;
    const group = groups.get(rule) ?? { rule, name, deductions: [] };
    group.deductions.push(deduction);
    groups.set(rule, group);
  }
  return [...groups.values()];
}

/**
 * Deductions of one rule, or of all where `rule` is empty, in which every word of a text occurs: in the name, the short form, a cell
 * or a candidate.
 */
export function find(deductions: readonly OpenDeduction[], text: string, rule: string): OpenDeduction[] {
  const words = text.toLowerCase().split(/\s+/).filter(Boolean);
  return deductions.filter((deduction) => {
    if (rule !== '' && deduction.rule !== rule) return false;
    if (words.length === 0) return true;
    const searched = wordsOf(deduction);
    return words.every((word) => searched.includes(word));
  });
}

function wordsOf({ name, short, cells, places, removes }: OpenDeduction): string {
  return [name, short, ...[...cells, ...places, ...removes].map(({ cell }) => cell)].join(' ').toLowerCase();
}
