let fetched = false;

/** Fetches the pages of all sums behind the one that was opened, so that they stand there when the network does not. */
export function fetchOtherSums(): void {
  if (fetched) return;
  fetched = true;
  const pages = [
    import("./threadPage.ts"),
    import("./levelPage.ts"),
    import("./dripPage.ts"),
    import("./curePage.ts"),
    import("./convertPage.ts"),
  ];
  Promise.all(pages).catch(() => {
    // Without a network now; whoever opens one is told then.
    fetched = false;
  });
}
