"""Numbers as they are read aloud in English."""

_ONES = (
    "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven",
    "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen",
)  # fmt: skip
_TENS = ("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")
_ORDINALS = {
    "one": "first",
    "two": "second",
    "three": "third",
    "five": "fifth",
    "eight": "eighth",
    "nine": "ninth",
    "twelve": "twelfth",
}


def read_number(figures: str) -> tuple[str, ...]:
    """Up to four figures as a number, more or with a leading zero one by one; no 'and' after hundred."""
    if len(figures) > 4 or (len(figures) > 1 and figures[0] == "0"):
        return tuple(_ONES[int(f)] for f in figures)
    return tuple(_cardinal(int(figures)))


def read_ordinal(figures: str) -> tuple[str, ...]:
    """``1st`` is first, ``22nd`` twenty second: the last word of the number takes its ordinal."""
    *start, last = read_number(figures)
    if last.endswith("y"):
        return (*start, f"{last[:-1]}ieth")
    return (*start, _ORDINALS.get(last, f"{last}th"))


def _cardinal(number: int) -> list[str]:
    for size, word in ((1000, "thousand"), (100, "hundred")):
        if number >= size:
            rest = number % size
            return [*_cardinal(number // size), word, *(_cardinal(rest) if rest else ())]
    if number < 20:
        return [_ONES[number]]
    tens, ones = divmod(number, 10)
    return [_TENS[tens - 2], *([_ONES[ones]] if ones else ())]
