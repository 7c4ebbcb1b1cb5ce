/** A sentence with {placeholders}; or one for each plural form of the language, chosen by {count}. */
export type Message =
  | string
  | ({ readonly [form in Intl.LDMLPluralRule]?: string } & { readonly other: string });
export type Messages = Readonly<Record<string, Message>>;

type HolesOf<Text extends string> = Text extends `${string}{${infer Name}}${infer Rest}`
  ? Name | HolesOf<Rest>
  : never;
type TextsOf<M> = M extends string ? M : M extends object ? M[keyof M] & string : never;

/** Names of the placeholders of a message; `count` is always one of a plural message. */
export type Holes<M> = HolesOf<TextsOf<M>> | (M extends string ? never : "count");
/** What has to be given to say a message: text as it is, numbers written as the language writes them. */
export type Values<M> = [Holes<M>] extends [never]
  ? []
  : [
      values: { readonly [name in Holes<M>]: string | number } & ("count" extends Holes<M>
        ? { readonly count: number }
        : unknown),
    ];
