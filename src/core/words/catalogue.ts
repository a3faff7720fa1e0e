/** English texts with `{}` where they hold numbers and names, each with its text in another language and as many gaps. */
export type Catalogue = Readonly<Record<string, string>>;
