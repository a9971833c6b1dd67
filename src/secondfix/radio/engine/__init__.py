"""The engine: crossings counted by class, and the mesh by random draws, 64 to a word."""
