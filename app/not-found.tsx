import Link from "next/link";

/** An address at which nothing is kept. */
export default function NotFound() {
  return (
    <main className="page">
      <h1>Nothing is kept here</h1>
      <p>
        The address may be from another workshop, or what it named was struck out.{" "}
        <Link href="/">All machines</Link>
      </p>
    </main>
  );
}
