/** The finest mark that the maker can set: a rule's fraction, a digital scale, a metric rule. */
export type RuleStep =
  | { readonly style: 'fraction'; readonly denominator: number }
  | { readonly style: 'decimal'; readonly places: number }
  | { readonly style: 'metric'; readonly stepMm: number };
