-- What staff's messages led to: asked when one of them is changed.
CREATE INDEX log_written ON log (at)
  WHERE kind IN ('staff', 'note', 'plan', 'ended', 'left', 'link', 'desk');
