"""A plan becomes dated prompts, doses and a calendar. Pure: no clock, no I/O."""
