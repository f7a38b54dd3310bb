"""A case's life: opened, joined, raised, taken, paged, answered, closed; and its card."""
