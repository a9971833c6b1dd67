"""The ink of the page itself, for drawings: one drawing serves the day and the night sheet."""

from secondfix.papers import Palette

INK = Palette(
    "var(--paper)", "var(--panel)", "var(--ink)", "var(--soft)", "var(--line)", "var(--hair)", "var(--accent)"
)
