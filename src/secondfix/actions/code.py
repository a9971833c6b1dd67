"""Code: read an onboarding code or an address; secrets stay hidden unless asked for."""

from dataclasses import dataclass

from secondfix.joining import Agreement, CodeReading, agree, read_code, shown


@dataclass(frozen=True, slots=True)
class CodeAnswer:
    """The reading; and, where a manual code was given beside it, whether the two agree."""

    reading: CodeReading
    agreement: Agreement | None

    @property
    def ok(self) -> bool:
        """No fault in the code, and nothing that disagrees."""
        return self.reading.ok and (self.agreement is None or self.agreement.agrees is True)


def code(
    text: str, *, address: str | None = None, kind: str | None = None, manual: str | None = None
) -> CodeAnswer:
    """Read ``text``; ``manual`` is the code printed beside a Matter QR text (ValueError: unknown kind)."""
    reading = read_code(text, address=address, kind=kind)
    return CodeAnswer(
        reading, None if manual is None else agree(reading, read_code(manual, kind="matter-manual"))
    )


def code_as_json(answer: CodeAnswer, *, reveal: bool) -> dict[str, object]:
    """The reading as JSON (docs/json.md); ``agreement`` is null where it was not asked for."""
    a = answer.agreement
    return {
        **shown(answer.reading, reveal=reveal),
        "agreement": None if a is None else {"agrees": a.agrees, "says": a.says},
    }
