import { cellCount, cellNamed } from '../../src/grid/cells.ts';
import type { AudienceAnswer, AudienceBoard, AudienceView } from '../../src/wireAudience.ts';
import { sketch } from '../drawn.ts';

interface Drawn extends Partial<Omit<AudienceBoard, 'placed'>> {
  /** Digits by the names of their cells. */
  placed?: Record<string, number>;
}

/** A board with the digits of the sketch as givens. */
export function boardView({ placed = {}, ...marks }: Drawn = {}): AudienceBoard {
  const digits = Array.from({ length: cellCount }, () => '.');
  for (const [name, digit] of Object.entries(placed)) digits[cellNamed(name) ?? -1] = `${digit}`;
  return {
    givens: sketch.replace(/\s/g, ''),
    placed: digits.join(''),
    lists: '',
    blockMarks: '',
    struck: '',
    ...marks,
  };
}

export function audienceView(said: Partial<AudienceView> = {}): AudienceView {
  return {
    sequence: 1,
    door: 'open',
    delaySeconds: 15,
    asks: { open: true, highest: 4, quietOnAir: false },
    isQuiet: false,
    credit: { title: 'Sketch', setter: 'Ourselves', link: 'https://example.org/sketch' },
    board: boardView(),
    ...said,
  };
}

/** A server that writes down what it is asked, as `Method argument argument`, and answers as told. */
export class ScriptedServer {
  readonly asked: string[] = [];
  readonly answers: (Partial<AudienceAnswer> | Error)[] = [];

  invoke(method: string, ...args: unknown[]): Promise<unknown> {
    this.asked.push([method, ...args.map((arg) => JSON.stringify(arg))].join(' '));
    const answer = this.answers.shift() ?? { kind: 'notice', words: [`Answer ${this.asked.length}`] };
    if (answer instanceof Error) return Promise.reject(answer);
    return Promise.resolve({ kind: 'notice', words: [], grade: null, picture: null, ...answer });
  }
}
