"""The moment of an event: the practice, its words and hours, and who speaks about whom."""
