"""What an event from someone at home leads to."""
