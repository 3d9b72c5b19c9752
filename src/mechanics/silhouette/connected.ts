/** Values in rows of `width`, of which those from `least` up hang together over their four neighbours. */
export type Above = { readonly values: Float32Array; readonly width: number; readonly least: number };

/**
 * The places of all values that hang together with the one at `start`, itself among them, and marks them in `seen`. `room` is
 * memory for as many places as there are values, to be used again.
 */
export function connectedFrom(
  start: number,
  { values, width, least }: Above,
  seen: Uint8Array,
  room: Int32Array,
): Int32Array {
  const ways = [-1, 1, -width, width] as const;
  let [done, count] = [0, 1];
  room[0] = start;
  seen[start] = 1;
  while (done < count) {
    const at = room[done++] as number;
    const column = at % width;
    for (let way = 0; way < 4; way++) {
      if ((way === 0 && column === 0) || (way === 1 && column === width - 1)) continue;
      const next = at + (ways[way] as number);
      if (next < 0 || next >= values.length || seen[next] || (values[next] as number) < least) continue;
      seen[next] = 1;
      room[count++] = next;
    }
  }
  return room.slice(0, count);
}
