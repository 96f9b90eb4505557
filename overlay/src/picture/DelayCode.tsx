import { Caption } from './Caption.tsx';

/** What the picture says of a code; viewers write it with their chat's sign before it. */
export const codeWords = (code: string) => `delay ${code}`;

/** The code by which viewers let the delay be measured: they write it in the chat as they see it. */
export function DelayCode({ code }: { code: string }) {
  return (
    <div class="delay-code">
      <Caption words={codeWords(code)} />
    </div>
  );
}
