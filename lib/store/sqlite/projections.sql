-- Search over the words of marks. A projection: `rebuild` makes it anew from the marks.
-- It is run after every migration and may be repeated.
CREATE VIRTUAL TABLE IF NOT EXISTS mark_words USING fts5(
  mark_id UNINDEXED, build_id UNINDEXED, words, tokenize = 'trigram'
);
