"""A dose's life: planned, shown, told, late, doubled, moved, held; and the gap between two."""
