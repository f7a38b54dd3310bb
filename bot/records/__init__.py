"""What leaves the system for a medical record, and what proves that it stands. Pure."""
