"""By ear: names of one house that sound alike when they are said aloud in English; advice at most."""

from secondfix.naming.by_ear.check import RULES, check, sound_not_asked

__all__ = ["RULES", "check", "sound_not_asked"]
