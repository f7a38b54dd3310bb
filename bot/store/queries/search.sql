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
      AND o.source = l.source))
  AND (:urgency IS NULL OR EXISTS (
    SELECT 1 FROM log AS f
    WHERE f.event = l.event AND f.patient_id = l.patient_id AND f.id > l.id
      AND f.kind = 'finding' AND json_extract(f.data, '$.urgency') = :urgency))
ORDER BY w.rowid DESC LIMIT :most;

-- name: search_all
SELECT l.id, l.patient_id, l.at, l.kind, l.author, p.name, l.text
FROM log AS l INDEXED BY log_said_all JOIN patient AS p ON p.id = l.patient_id
WHERE l.kind = 'said' AND l.id BETWEEN :first AND :last
  AND (:patient_id IS NULL OR l.patient_id = :patient_id)
  AND l.at >= :since AND l.at < :until
ORDER BY l.id DESC LIMIT :most;

-- Words and buttons alike. A few findings stand at one message, so some more are taken.
-- name: search_urgency
WITH hit AS (
  SELECT f.id AS finding, coalesce((
      SELECT max(h.id) FROM log AS h
      WHERE h.event = f.event AND h.patient_id = f.patient_id AND h.id < f.id
        AND h.kind IN ('said', 'tapped', 'picture')), f.id) AS entry
  FROM log AS f INDEXED BY log_finding
  WHERE f.kind = 'finding' AND json_extract(f.data, '$.urgency') = :urgency
    AND (:patient_id IS NULL OR f.patient_id = :patient_id)
    AND f.at >= :since AND f.at < :until
  ORDER BY f.id DESC LIMIT CASE WHEN :topic IS NULL THEN :most * 4 ELSE -1 END)
SELECT DISTINCT l.id, l.patient_id, l.at, l.kind, l.author, p.name, l.text
FROM hit JOIN log AS l ON l.id = hit.entry JOIN patient AS p ON p.id = l.patient_id
WHERE :topic IS NULL OR EXISTS (
  SELECT 1 FROM observation AS o
  WHERE o.patient_id = l.patient_id AND o.about = :topic AND o.state = 'stands'
    AND o.source = l.source)
ORDER BY l.id DESC LIMIT :most;

-- name: search_topic
WITH hit AS (
  SELECT o.patient_id, o.source FROM observation AS o INDEXED BY observation_topic
  WHERE o.about = :topic AND o.state = 'stands'
    AND o.patient_id BETWEEN coalesce(:patient_id, 0) AND coalesce(:patient_id, 9223372036854775807)
    AND o.at >= :since AND o.at < :until
  ORDER BY o.at DESC LIMIT :most * 4)
SELECT DISTINCT l.id, l.patient_id, l.at, l.kind, l.author, p.name, l.text
FROM hit JOIN log AS l ON l.patient_id = hit.patient_id
  AND l.kind IN ('said', 'tapped', 'picture') AND l.source = hit.source
  JOIN patient AS p ON p.id = l.patient_id
ORDER BY l.id DESC LIMIT :most;

-- name: search_bounds
SELECT
  CASE WHEN :patient_id IS NULL THEN (SELECT min(id) FROM log)
    ELSE (SELECT min(id) FROM log WHERE patient_id = :patient_id) END AS first,
  CASE WHEN :patient_id IS NULL THEN (SELECT max(id) FROM log)
    ELSE (SELECT max(id) FROM log WHERE patient_id = :patient_id) END AS last;
