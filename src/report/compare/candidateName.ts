/** What a maker would call a candidate: its photo's name without folder and ending. */
export const candidateName = ({ photo }: { readonly photo: string }): string =>
  photo.replace(/^.*[\\/]/, '').replace(/\.(jpe?g|png|webp|tiff?|avif|heic)$/i, '');
