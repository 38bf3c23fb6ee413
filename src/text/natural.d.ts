// The package's folders have types, its single files have none; a folder loads seventeen stemmers where one is needed.
declare module 'natural/lib/natural/phonetics/double_metaphone.js' {
  export default class DoubleMetaphone {
    process(token: string): string[];
  }
}
declare module 'natural/lib/natural/stemmers/porter_stemmer.js' {
  const PorterStemmer: { stem(token: string): string };
  export default PorterStemmer;
}
