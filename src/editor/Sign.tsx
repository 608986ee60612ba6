/** A sign of lines on a button; the button itself says what it is. */
export function Sign({ path }: { readonly path: string }) {
  return (
    <svg viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      <path d={path} />
    </svg>
  );
}
