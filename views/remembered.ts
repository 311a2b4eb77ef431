/**
 * Markup that depends on one unchanging thing and a few values: made again only when one of these is another. An edit
 * leaves most runs and fixtures of a job as the same objects, so most of a page is there already.
 */
export function remembered<Thing extends object, Values extends readonly unknown[]>(
  make: (thing: Thing, ...values: Values) => JSX.Element,
): (thing: Thing, ...values: Values) => string {
  const known = new WeakMap<Thing, { readonly values: Values; readonly html: string }>();
  return (thing, ...values) => {
    const last = known.get(thing);
    if (last?.values.every((value, index) => value === values[index]) === true) return last.html;
    const html = make(thing, ...values) as string;
    known.set(thing, { values, html });
    return html;
  };
}
