"""The order in which a person reads ids: D2 before D10."""


def natural(key: str) -> tuple[str, int]:
    """Letters, then the number at the end; -1 where there is none."""
    head = key.rstrip("0123456789")
    return head, int(key[len(head) :] or -1)
