"""Words as both databases can hold them."""


def plain(words: str, most: int = 2000) -> str:
    """``words`` without the zero character, which PostgreSQL does not hold, and at most ``most`` long."""
    return words.replace("\0", "")[:most]
