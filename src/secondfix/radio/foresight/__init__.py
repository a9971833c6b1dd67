"""Foresight: who is reached in draws, and who falls when something goes, is pulled, trips or moves."""
