declare module "jsonld" {
  interface Loaded {
    contextUrl: null;
    documentUrl: string;
    document: unknown;
  }
  interface Options {
    documentLoader: (url: string) => Promise<Loaded>;
    base?: string;
    /** Refuses what would be dropped without a word. */
    safe?: boolean;
  }
  const jsonld: {
    expand: (document: unknown, options: Options) => Promise<Record<string, unknown>[]>;
  };
  export default jsonld;
}
