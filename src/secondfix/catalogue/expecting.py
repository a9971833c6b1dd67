"""What was expected at a fault of shape, in words that a person can act on."""

from pydantic_core import ErrorDetails

_PATTERNS = {
    r"^[A-Z][A-Za-z0-9_-]{0,15}$": "a capital, then letters, digits, - or _, 16 characters at most",
    r"^[1-9][0-9]?$": 'a number in quotes, such as "1"',
    r"^[A-Z][A-Za-z0-9_-]{0,15}\.[1-9][0-9]?$": "a box and a gang, such as B07.2",
    r"^[a-z][a-z0-9_-]{0,30}$": "a tag: small letters, digits, - or _",
    r"^[a-z][a-z0-9-]{0,30}$": "small letters, digits and -, 31 characters at most",
    r"^[a-z][a-z0-9-]{1,62}@[1-9][0-9]?$": "<maker>-<name>@<edition>; secondfix models lists those at hand",
    r"^K[0-9]{2,4}$": "a reference such as K07: the code itself is on the key ring",
    r"^[0-9A-F]{16}$": "16 hex digits in capitals, without separators",
    r"^([01][0-9]|2[0-3]):[0-5][0-9]$": "a time such as 06:40",
}
_TYPES = {
    "int_type": "a whole number",
    "int_from_float": "a whole number",
    "bool_type": "true or false",
    "string_type": "text in quotes",
    "tuple_type": "a list",
    "list_type": "a list",
    "dict_type": "an object",
    "extra_forbidden": "a key that the format knows",
    "missing": "this key, which is required",
}


def expected(error: ErrorDetails) -> str:
    """The expectation of one fault that pydantic found, in our words where it speaks its own."""
    kind, context = error["type"], error.get("ctx", {})
    if kind == "string_pattern_mismatch":
        pattern = str(context["pattern"])
        return _PATTERNS.get(pattern, f"text of the form {pattern}")
    if kind == "model_type":
        of_fact = "Fact[" in str(context.get("class_name", ""))
        return '{ "value": ..., "known": "measured" }' if of_fact else "an object"
    if kind in {"too_short", "too_long"}:
        most = kind == "too_long"
        return (
            f"{'at most' if most else 'at least'} {context['max_length' if most else 'min_length']} of them"
        )
    if kind in _TYPES:
        return _TYPES[kind]
    words = error["msg"].removeprefix("Value error, ")
    return words.removeprefix("Input should be ").removeprefix("String should ")
