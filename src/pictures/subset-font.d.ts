/** What we use of subset-font, which comes without types. */
declare module 'subset-font' {
  export default function subsetFont(
    font: Uint8Array,
    text: string,
    options: { readonly targetFormat: string; readonly variationAxes: { readonly wght: number } },
  ): Promise<Buffer>;
}
