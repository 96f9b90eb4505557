import { useSignal } from '@preact/signals';
import { useDesk } from '../context.ts';

export function AddScene() {
  const { scenes } = useDesk();
  const refusal = useSignal('');

  const add = async (event: SubmitEvent) => {
    event.preventDefault();
    const form = event.currentTarget as HTMLFormElement;
    const name = String(new FormData(form).get('name') ?? '').trim();
    refusal.value = (await scenes.add(name)) ?? '';
    if (refusal.value === '') form.reset();
  };

  return (
    <form class="add-scene row" onSubmit={add}>
      <label>
        New scene
        <input name="name" required maxLength={40} autocomplete="off" />
      </label>
      <button type="submit">Add</button>
      <p role="alert">{refusal.value}</p>
    </form>
  );
}
