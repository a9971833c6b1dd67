"""Radio: will the mesh carry it, and on whom does each device hang."""
