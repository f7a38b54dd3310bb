"""What an event from staff leads to."""
