/** What a puzzle is called, and whom it is owed to. */
export function Credits() {
  return (
    <>
      <label>
        Title
        <input name="title" autocomplete="off" />
      </label>
      <label>
        Set by
        <input name="setter" autocomplete="off" />
      </label>
      <label>
        Link
        <input name="link" type="url" placeholder="https://" autocomplete="off" />
      </label>
    </>
  );
}
