/** A tea as the shop knows it: what it is, and every name a person may call it by. */
import type { Celsius, Language } from '../units.ts';

export interface Tea {
  readonly id: string;
  readonly family: string;
  /** A form of data/leaf-forms.yaml. */
  readonly form: string;
  readonly names: { readonly [language in Language]: string };
  /** Nothing of its own is known but its form and water. */
  readonly byKind?: true;
  /** Other names in any script: pinyin, older romanisations, Cantonese, trade names. */
  readonly aliases: readonly string[];
  /** Where this leaf differs from what its family and form say. */
  readonly leaf?: LeafDifferences;
}

export interface LeafDifferences {
  /** A scented tea: the family of the tea under the flowers. */
  readonly brewedAs?: string;
  /** Times those of its family. */
  readonly dose?: number;
  readonly strength?: number;
  readonly waterC?: Celsius;
  /** Dry-leaf content, mg per g. */
  readonly caffeineMgPerG?: number;
  readonly aminoMgPerG?: number;
  readonly catechinMgPerG?: number;
  readonly gallateMgPerG?: number;
  readonly bulkGPerMl?: number;
}
