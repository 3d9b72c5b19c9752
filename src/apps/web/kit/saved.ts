/** Keeps a value of the page in this browser, as it is; null where nothing was kept or the browser keeps nothing. */
export function kept<T>(key: string): T | null {
  try {
    const text = localStorage.getItem(`turnsleft.${key}`);
    return text === null ? null : (JSON.parse(text) as T);
  } catch {
    return null;
  }
}

/** Keeps a value; a browser that refuses (private window, full) works on without. */
export function keep(key: string, value: unknown): void {
  try {
    localStorage.setItem(`turnsleft.${key}`, JSON.stringify(value));
  } catch {}
}

/** Forgets a value. */
export function forget(key: string): void {
  try {
    localStorage.removeItem(`turnsleft.${key}`);
  } catch {}
}
