"""Bodies of calls: JSON with each key once, no deeper than a document; ids and numbers within bounds."""

from typing import Annotated, Any

from django.http import HttpRequest
from ninja import Path, Query
from ninja.parser import Parser

from secondfix.house import parse
from secondfix.web.api.refusing import UnreadableError

LARGEST_NUMBER = 2**31 - 1
"""What the tables hold as the number of an edit."""

HouseId = Annotated[str, Path(description="The id of a house.", min_length=1, max_length=64)]
EditNumber = Annotated[int, Path(description="The number of an edit.", ge=1, le=LARGEST_NUMBER)]
Base = Annotated[int, Query(description="The edit that the document was made from.", ge=1, le=LARGEST_NUMBER)]
Numbers = Annotated[bool, Query(description="Chances, losses and margins too.")]
_UUID7 = "^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$"
EditId = Annotated[
    str | None,
    Query(
        description="A UUID of version 7 of your own: sent again, the same save is answered the same.",
        pattern=_UUID7,
    ),
]
Words = Annotated[
    str, Query(description="What was changed, in words; made from what differs if left out.", max_length=2000)
]


class Reader(Parser):
    """As the house's own reader of JSON: size, depth, no key twice, no value that is no number."""

    def parse_body(self, request: HttpRequest) -> dict[str, Any]:
        """The body's object. Raises UnreadableError with every fault."""
        plain, faults = parse(request.body, where="body")
        if faults:
            raise UnreadableError(faults)
        object_: dict[str, Any] = plain
        return object_
