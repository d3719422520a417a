"use client";

/** A page that failed. What was said to be on disk is there; only this page could not be shown. */
export default function PageError({ error, reset }: { error: Error; reset: () => void }) {
  return (
    <main className="page">
      <h1>This page could not be shown</h1>
      <p>What the program called “on disk” is on disk; nothing of it is lost.</p>
      <p className="soft small">{error.message}</p>
      <div className="row-of-buttons">
        <button type="button" className="main" onClick={reset}>
          Try again
        </button>
        <a href="/">All machines</a>
      </div>
    </main>
  );
}
