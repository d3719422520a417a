-- Search over everything that was written: marks, gotchas, parts, what was said. A projection: `rebuild` makes it anew.
-- It is run after every migration and may be repeated.

-- Its form before entries had numbers of their own.
DROP TABLE IF EXISTS mark_words;

-- An entry a mark, gotcha, part or caption cue. `head`, `body` and `facets` are folded words, with a space between.
CREATE TABLE IF NOT EXISTS search_entry (
  number INTEGER PRIMARY KEY,
  source TEXT NOT NULL, row TEXT NOT NULL, part INTEGER NOT NULL,
  build TEXT, machine TEXT, sitting TEXT, recording TEXT, at REAL, kind TEXT NOT NULL,
  text TEXT NOT NULL, head TEXT NOT NULL, body TEXT NOT NULL, facets TEXT NOT NULL
);
CREATE UNIQUE INDEX IF NOT EXISTS search_entry_row ON search_entry (source, row, part);

CREATE VIRTUAL TABLE IF NOT EXISTS search_words USING fts5(
  head, body, facets, content = '', contentless_delete = 1, prefix = '2 3', tokenize = 'unicode61 remove_diacritics 0'
);
INSERT INTO search_words (search_words, rank) VALUES ('rank', 'bm25(4.0, 1.0, 0.0)');

-- Every word that occurs, or once did; mistyped words and parts of numbers are looked for here.
CREATE TABLE IF NOT EXISTS search_term (term TEXT PRIMARY KEY) WITHOUT ROWID;

CREATE TRIGGER IF NOT EXISTS search_entry_added AFTER INSERT ON search_entry BEGIN
  INSERT INTO search_words (rowid, head, body, facets) VALUES (new.number, new.head, new.body, new.facets);
  INSERT OR IGNORE INTO search_term SELECT value
  FROM json_each('["' || replace(trim(new.head || ' ' || new.body), ' ', '","') || '"]') WHERE value <> '';
END;
CREATE TRIGGER IF NOT EXISTS search_entry_taken AFTER DELETE ON search_entry BEGIN
  DELETE FROM search_words WHERE rowid = old.number;
END;
