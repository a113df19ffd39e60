import type { english } from './english/english';
import type { help } from './english/help';

/** Same shape with every text free: what a second language has to give. */
type Spoken<Part> = Part extends string
  ? string
  : Part extends (...values: infer Values) => string
    ? (...values: Values) => string
    : Part extends (...values: infer Values) => infer Result
      ? (...values: Values) => Spoken<Result>
      : { readonly [Name in keyof Part]: Spoken<Part[Name]> };

/** Every text of the program; a language that lacks one does not compile. */
export type Texts = Spoken<typeof english>;

/** Every text of the help page. */
export type HelpTexts = Spoken<typeof help>;
