/** The title block of pages that belong to no build. */
export const bookCells = [
  { field: "Book", value: "Machines", href: "/" },
  { field: "Book", value: "Gotchas", href: "/gotchas" },
  { field: "Book", value: "Find", href: "/find" },
  { field: "Book", value: "Reference", href: "/reference" },
  { field: "Workshop", value: "Keys and settings", href: "/settings" },
  { field: "Workshop", value: "Keep it", href: "/keep" },
];
