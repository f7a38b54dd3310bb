"""Whole conversations as files: read, played through the core, and compared with what must
and must not come of them. No database, no network, no clock of the machine."""
