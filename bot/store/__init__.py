"""The only room that speaks SQL: one file, whole transactions, named statements."""
