export * from "#lib/rational/index.ts";
