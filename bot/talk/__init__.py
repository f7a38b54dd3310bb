"""What an event in a chat leads to: messages, observations, cases, log. Pure.

An event and a ``Scene`` (all that is known, read from the store beforehand) go in; an
``Outcome`` (all that is to be kept and sent) comes out and is committed as one
transaction. Nothing here knows the clock, the database or the chat platform.
"""
