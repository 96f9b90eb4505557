import { useDesk } from '../context.ts';
import { KeyHint } from '../KeyHint.tsx';

/** Whether co-hosts may put things on air: the presenter gives and takes it, a co-host reads it. */
export function CoHostPermission() {
  const { air } = useDesk();
  const mayAir = air.coHostMayAir.value;
  if (!air.isPresenter.value)
    return (
      <p class="permission" role="status">
        {mayAir ? 'You may put things on air.' : 'The presenter alone puts things on air now.'}
      </p>
    );
  return (
    <label class="check">
      <input
        type="checkbox"
        checked={mayAir}
        aria-keyshortcuts="A"
        onChange={(event) => air.allowCoHost(event.currentTarget.checked)}
      />
      Co-hosts may put things on air <KeyHint keys="A" />
    </label>
  );
}
