"""The demo: an invented patient, a clock that runs faster, and a chat platform of its own.

Nothing here is for a real patient; nothing here leaves this machine.
"""
