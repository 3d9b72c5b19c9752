/**
 * A function of one object that reckons each object once, as long as somebody still holds it. Only for what depends on
 * nothing but the object, and whose results nobody changes.
 */
export function remembered<K extends object, V>(made: (key: K) => V): (key: K) => V {
  const known = new WeakMap<K, { readonly value: V }>();
  return (key) => {
    const found = known.get(key) ?? { value: made(key) };
    known.set(key, found);
    return found.value;
  };
}
