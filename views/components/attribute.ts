/**
 * Text of a reader's making as an attribute's value. The renderer escapes the quote that would end the value; an
 * ampersand it leaves, and `&lt;` typed into a name would come back as another name.
 */
export function attribute(text: string): string {
  return text.replaceAll('&', '&amp;');
}
