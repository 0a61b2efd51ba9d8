/**
 * A drawing made by src/report as SVG text. The text comes from our own pure code, which escapes
 * every word in it; nothing a file or a person wrote reaches it unescaped.
 */
export function Drawing({ svg }: { readonly svg: string }) {
  // biome-ignore lint/security/noDangerouslySetInnerHtml: see above
  return <g dangerouslySetInnerHTML={{ __html: svg }} />;
}
