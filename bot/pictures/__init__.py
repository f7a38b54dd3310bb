"""Pictures and films as bytes: checked, cleaned, put side by side. Pure; no file, no chat.

Pillow, numpy and PyAV are imported when first needed, so that the bot starts without them.
"""
