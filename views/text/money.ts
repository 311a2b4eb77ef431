/** Whole cents as the reader sees money, with the currency's sign: `$1,551.01`. */
export function money(cents: number, currency: string): string {
  const text = new Intl.NumberFormat('en-US', { style: 'currency', currency }).format(Math.abs(cents) / 100);
  return cents < 0 ? `−${text}` : text;
}

/** A difference of money with its sign always written: `+$12.00`. */
export function signedMoney(cents: number, currency: string): string {
  if (cents === 0) return money(0, currency);
  return cents > 0 ? `+${money(cents, currency)}` : money(cents, currency);
}

/** Money without its cents, for the marks of an axis. */
export function wholeMoney(cents: number, currency: string): string {
  return new Intl.NumberFormat('en-US', { style: 'currency', currency, maximumFractionDigits: 0 }).format(
    cents / 100,
  );
}

/** A price of one piece or foot, with as many decimals as the book gives it, two at least and four at most. */
export function unitMoney(price: number, currency: string): string {
  return new Intl.NumberFormat('en-US', { style: 'currency', currency, maximumFractionDigits: 4 }).format(
    price,
  );
}
