"""The shell: it reads, thinks through ``bot.talk``, keeps, and then sends."""
