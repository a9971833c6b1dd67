"""How single words and sentences are printed."""


def sentence(words: str) -> str:
    """With a capital letter and a full stop, as a note is printed."""
    return words[:1].upper() + words[1:] + ("" if not words or words[-1] in ".?!" else ".")


def counted(count: int, one: str, many: str = "") -> str:
    """``1 fault``, ``2 faults``."""
    return f"{count} {one if count == 1 else many or one + 's'}"
