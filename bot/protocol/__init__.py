"""Reading protocols and settings from YAML, with the file, the line and the mend of an error."""
