/** The code by which one device is let in, as it stands on the workshop's own screen. */
export const pairingLine = ({ code, seconds }: { readonly code: string; readonly seconds: number }): string =>
  `Pairing code ${code}: lets one device in within ${seconds / 60} minutes; npx turnsleft pair gives a new one.`;
