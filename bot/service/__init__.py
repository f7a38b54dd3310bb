"""The shell: it reads, thinks through ``bot.events``, keeps, and then sends."""
