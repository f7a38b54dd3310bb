-- Search is SQLite's own (full text by FTS5, JSON): another back end brings its own file.
-- name: search_words
SELECT l.id, l.patient_id, l.at, l.kind, l.author, p.name,
  highlight(log_words, 0, char(2), char(3)) AS text
FROM log_words AS w JOIN log AS l ON l.id = w.rowid JOIN patient AS p ON p.id = l.patient_id
WHERE log_words MATCH :words AND w.rowid BETWEEN :first AND :last
  AND (:patient_id IS NULL OR l.patient_id = :patient_id)
  AND l.at >= :since AND l.at < :until
  AND (:topic IS NULL OR EXISTS (
    SELECT 1 FROM observation AS o
    WHERE o.patient_id = l.patient_id AND o.about = :topic AND o.state = 'stands'
      AND o.source = json_extract(l.data, '$.source')))
  AND (:urgency IS NULL OR EXISTS (
    SELECT 1 FROM log AS f
    WHERE f.patient_id = l.patient_id AND f.id > l.id AND f.id <= l.id + 40 AND f.at = l.at
      AND f.kind = 'finding' AND json_extract(f.data, '$.urgency') = :urgency))
ORDER BY w.rowid DESC LIMIT :most;

-- name: search_all
SELECT l.id, l.patient_id, l.at, l.kind, l.author, p.name, l.text
FROM log AS l INDEXED BY log_said_all JOIN patient AS p ON p.id = l.patient_id
WHERE l.kind = 'said' AND l.id BETWEEN :first AND :last
  AND (:patient_id IS NULL OR l.patient_id = :patient_id)
  AND l.at >= :since AND l.at < :until
  AND (:topic IS NULL OR EXISTS (
    SELECT 1 FROM observation AS o
    WHERE o.patient_id = l.patient_id AND o.about = :topic AND o.state = 'stands'
      AND o.source = json_extract(l.data, '$.source')))
  AND (:urgency IS NULL OR EXISTS (
    SELECT 1 FROM log AS f
    WHERE f.patient_id = l.patient_id AND f.id > l.id AND f.id <= l.id + 40 AND f.at = l.at
      AND f.kind = 'finding' AND json_extract(f.data, '$.urgency') = :urgency))
ORDER BY l.id DESC LIMIT :most;

-- name: search_bounds
SELECT
  CASE WHEN :patient_id IS NULL THEN (SELECT min(id) FROM log)
    ELSE (SELECT min(id) FROM log WHERE patient_id = :patient_id) END AS first,
  CASE WHEN :patient_id IS NULL THEN (SELECT max(id) FROM log)
    ELSE (SELECT max(id) FROM log WHERE patient_id = :patient_id) END AS last;
