/** Whether a text is a day of the calendar, written 2026-11-25. */
export function isDay(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const day = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && dayOf(day) === text;
}

/** The day of a moment, by the clock of Greenwich. */
export function dayOf(moment: Date): string {
  return moment.toISOString().slice(0, 10);
}
