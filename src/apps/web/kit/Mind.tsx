/** Cautions, where they matter. */
export function Mind({ cautions }: { readonly cautions: readonly string[] }) {
  if (cautions.length === 0) return null;
  return (
    <div class="cautions">
      <h3>Mind</h3>
      <ul>
        {cautions.map((it) => (
          <li key={it}>{it}</li>
        ))}
      </ul>
    </div>
  );
}
