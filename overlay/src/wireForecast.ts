/** When the featured rules come, as it crosses the wire. For the desks alone. */

/** The soonest first; then what does not come. */
export type Coming = 'open' | 'near' | 'ahead' | 'late' | 'never' | 'shown' | 'off';

/** A pattern that one false candidate is in the way of. */
export interface NearMiss {
  /** The candidate's. */
  cell: string;
  digit: number;
  pattern: string[];
}

export interface ForecastLine {
  rule: string;
  name: string;
  coming: Coming;
  /** It was open or ahead once. */
  isPassed: boolean;
  /** How many easier steps lead to it at most; null where none do. */
  steps: number | null;
  /** How many at least: equal where there is no shorter way. */
  atLeast: number | null;
  /** The cells of the pattern that comes first. */
  watch: string[];
  nearMisses: NearMiss[];
}

export interface ForecastView {
  /** The state whose board it looks ahead from. */
  sequence: number;
  blocked: string | null;
  rules: ForecastLine[];
}
