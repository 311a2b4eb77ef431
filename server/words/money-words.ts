/** Whole cents as money, `1,234.56`. */
export function money(cents: number): string {
  const [whole, part] = (Math.abs(cents) / 100).toFixed(2).split('.');
  const sign = cents < 0 ? '-' : '';
  return `${sign}${whole!.replace(/\B(?=(\d{3})+$)/g, ',')}.${part}`;
}

/** A difference of money with its sign, `+12.00`; nothing where there is none. */
export function moneyMore(cents: number): string {
  if (cents === 0) return '0.00';
  return `${cents > 0 ? '+' : ''}${money(cents)}`;
}

/** Whole cents as a decimal for programs, `1234.56`. */
export function moneyJson(cents: number): string {
  return (cents / 100).toFixed(2);
}
