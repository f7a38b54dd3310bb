"""One event in, its effects out: from home, from the desk, or fallen due."""
