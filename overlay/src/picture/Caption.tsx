import 'virtual:palette/roles.css';
import './caption.css';

/** The words of a picture, on a plate of their own. */
export function Caption({ words }: { words: string }) {
  return <p class="caption">{words}</p>;
}
