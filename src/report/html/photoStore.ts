import { escapeXml } from '../draw/escapeXml.js';

/**
 * Photographs held once by a page, for all its drawings to use by their ids.
 *
 * @param photos [id, address] of each.
 */
export function photoStore(...photos: readonly (readonly [string, string])[]): string {
  const images = photos.map(
    ([id, href]) =>
      `<image id="${id}" href="${escapeXml(href)}" width="1" height="1" preserveAspectRatio="none"/>`,
  );
  return `<svg class="photo-store" aria-hidden="true"><defs>${images.join('')}</defs></svg>`;
}
