/** The words of an English file in another language: each of its phrases and no other, with the same `{names}`. */
export type Translated<English> = { readonly [Code in keyof English]: string }
