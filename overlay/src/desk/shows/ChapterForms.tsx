import { useState } from 'preact/hooks';
import { useDesk } from '../context.ts';

const forms = [
  { form: 'list', words: 'List for a description' },
  { form: 'webvtt', words: 'WebVTT' },
  { form: 'ffmetadata', words: 'FFmetadata' },
  { form: 'json', words: 'JSON chapters' },
  { form: 'edl', words: 'Markers for a cutting program (EDL)' },
];

const rates = ['25', '24', '30', '50', '60', '23.976', '29.97', '59.94'];

/** Takes the kept chapters along in a form that another program reads. */
export function ChapterForms({ show, isChanged }: { show: number; isChanged: boolean }) {
  const { shows } = useDesk();
  const [form, choose] = useState('list');
  const [rate, chooseRate] = useState('25');
  return (
    <div class="row forms">
      <label>
        As{' '}
        <select value={form} onChange={(event) => choose(event.currentTarget.value)}>
          {forms.map(({ form: name, words }) => (
            <option key={name} value={name}>
              {words}
            </option>
          ))}
        </select>
      </label>
      {form === 'edl' && (
        <label>
          Frames a second{' '}
          <select value={rate} onChange={(event) => chooseRate(event.currentTarget.value)}>
            {rates.map((each) => (
              <option key={each}>{each}</option>
            ))}
          </select>
        </label>
      )}
      <button type="button" disabled={isChanged} onClick={() => shows.writeChapters(show, form, rate, true)}>
        Copy
      </button>
      <button type="button" disabled={isChanged} onClick={() => shows.writeChapters(show, form, rate, false)}>
        Save as a file
      </button>
      {isChanged && <span class="hint">Save the chapters first.</span>}
    </div>
  );
}
