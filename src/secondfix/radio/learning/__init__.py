"""Learning: what measured links tell of a house, and of the links that nobody measured."""
