const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/**
 * Makes any text safe inside XML and HTML, as content and inside quotes.
 * Control characters, which XML 1.0 section 2.2 forbids even as references, are dropped.
 */
export function escapeXml(text: string): string {
  return [...text]
    .filter((sign) => sign >= ' ' || sign === '\n' || sign === '\t')
    .join('')
    .replace(
      /[\ufffe\uffff]|[\ud800-\udfff](?![\udc00-\udfff])(?<![\ud800-\udbff][\udc00-\udfff])/g,
      '',
    )
    .replace(/[&<>"']/g, (sign) => entities[sign]!);
}
