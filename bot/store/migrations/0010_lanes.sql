-- The inbox by household: each has a lane, in order; turn makes the lanes take turns, and
-- an urgent row brings its whole lane to the front.
ALTER TABLE inbox ADD COLUMN lane TEXT NOT NULL DEFAULT '';
ALTER TABLE inbox ADD COLUMN turn INTEGER NOT NULL DEFAULT 0;
ALTER TABLE inbox ADD COLUMN urgent INTEGER NOT NULL DEFAULT 0;
CREATE INDEX inbox_first ON inbox (urgent DESC, turn, update_id) WHERE state = 'waiting';
CREATE INDEX inbox_turn ON inbox (turn) WHERE state = 'waiting';
CREATE INDEX inbox_lane ON inbox (lane, update_id) WHERE state = 'waiting';
CREATE INDEX inbox_lane_turn ON inbox (lane, turn) WHERE state = 'waiting';
