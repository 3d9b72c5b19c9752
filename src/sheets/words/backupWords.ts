/** How old the last daily backup is, in a line for the wall; one of more than a day and a bit shouts. */
export function backupLine(backup: { readonly age_h: number } | null): string {
  if (backup === null) return "NO DAILY BACKUP yet; npx turnsleft start makes one a day.";
  const { age_h } = backup;
  const age = age_h < 1 ? "less than an hour" : age_h < 48 ? `${Math.floor(age_h)} h` : `${Math.floor(age_h / 24)} d`;
  return age_h > LATE_h ? `THE LAST BACKUP IS ${age} OLD; npx turnsleft start says why.` : `Last backup: ${age} ago.`;
}

/** A day, and the two hours by which a machine that is switched on late is late. */
const LATE_h = 26;
