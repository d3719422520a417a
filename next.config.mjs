// Plain JavaScript: read as TypeScript, it would bring the compiler into the running program.

/** @type {import("next").NextConfig} */
const config = {
  // Compression would take away the length of what is served, and buys nothing on the loopback address.
  compress: false,
  poweredByHeader: false,
  devIndicators: false,
  typescript: { ignoreBuildErrors: true }, // `npm run types` checks them, tests included
  serverExternalPackages: [
    "better-sqlite3",
    "@prisma/client",
    "@prisma/adapter-better-sqlite3",
    "@myriaddreamin/typst-ts-node-compiler",
    "sharp",
    "mediabunny",
    "tsx",
  ],
  turbopack: { root: import.meta.dirname },
};

export default config;
