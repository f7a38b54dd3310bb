"""Package data: the protocols, red-flag rules and words that a practice may read and change."""
