const others: Readonly<Record<string, number>> = {
  '‘': 0x91,
  '’': 0x92,
  '“': 0x93,
  '”': 0x94,
  '–': 0x96,
  '—': 0x97,
  '…': 0x85,
  '€': 0x80,
};

/**
 * Text as codes of the WinAnsi encoding (PDF 1.7, annex D); signs outside it become `?`.
 * Greek, Cyrillic and the like would need a font file, which this sheet does without.
 */
export function winAnsiCodes(text: string): number[] {
  return [...text.normalize('NFC')].map((sign) => {
    const code = sign.codePointAt(0)!;
    if ((code >= 32 && code <= 126) || (code >= 160 && code <= 255)) return code;
    return others[sign] ?? 63;
  });
}
