"""The values every room speaks in: no clock, no I/O, no libraries but pydantic."""
