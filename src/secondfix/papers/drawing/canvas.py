"""A page of SVG put together line by line: every text escaped, every figure short."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, field
from xml.sax.saxutils import escape, quoteattr

from secondfix.papers.font import FAMILY, face
from secondfix.papers.palette import FITTING, TEXT, Palette

Xy = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Rect:
    """A box on the page; y runs downward."""

    left: float
    top: float
    right: float
    bottom: float

    def meets(self, other: "Rect", gap: float = 0.0) -> bool:
        """Whether the two come nearer than ``gap``."""
        return (
            self.left < other.right + gap
            and other.left < self.right + gap
            and self.top < other.bottom + gap
            and other.top < self.bottom + gap
        )


def figure(value: float) -> str:
    """A coordinate with two decimals at most."""
    text = f"{value:.2f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


def points(places: Iterable[Xy]) -> str:
    """Coordinates as SVG's polygons take them."""
    return " ".join(f"{figure(x)},{figure(y)}" for x, y in places)


@dataclass(slots=True)
class Canvas:
    """What has been drawn so far. Lengths are user units of 1/96 inch.

    ``ways`` are addresses by id: on a screen what is drawn as ``linked`` leads there; paper has none.
    """

    palette: Palette
    parts: list[str] = field(default_factory=list)
    ways: Mapping[str, str] = field(default_factory=dict)

    def add(self, tag: str, **attributes: str | float) -> None:
        """One element; an underscore in a name stands for the hyphen."""
        self.parts.append(f"<{tag} {_attributes(attributes)}/>")

    @contextmanager
    def linked(self, thing: str, says: str) -> Iterator[None]:
        """Whatever is drawn meanwhile leads to the address of ``thing``, if it has one."""
        if thing not in self.ways:
            yield
            return
        self.parts.append(f"<a href={quoteattr(self.ways[thing])} aria-label={quoteattr(says)}>")
        yield
        self.parts.append("</a>")

    def line(self, a: Xy, b: Xy, *, weight: float = FITTING, colour: str = "", dash: str = "") -> None:
        """A straight line."""
        extra: dict[str, str | float] = {"stroke_dasharray": dash} if dash else {}
        self.add(
            "line",
            x1=a[0],
            y1=a[1],
            x2=b[0],
            y2=b[1],
            stroke=colour or self.palette.ink,
            stroke_width=weight,
            **extra,
        )

    def polyline(
        self, places: Sequence[Xy], *, weight: float = FITTING, colour: str = "", dash: str = ""
    ) -> None:
        """An open line through several points."""
        extra: dict[str, str | float] = {"stroke_dasharray": dash} if dash else {}
        stroke = colour or self.palette.ink
        self.add("polyline", points=points(places), fill="none", stroke=stroke, stroke_width=weight, **extra)

    def polygon(
        self,
        places: Sequence[Xy],
        *,
        weight: float = FITTING,
        colour: str = "",
        fill: str = "none",
        dash: str = "",
    ) -> None:
        """A closed outline; without weight a mere patch of ``fill``."""
        extra: dict[str, str | float] = {"stroke_dasharray": dash} if dash else {}
        stroke = (colour or self.palette.ink) if weight else "none"
        self.add("polygon", points=points(places), fill=fill, stroke=stroke, stroke_width=weight, **extra)

    def rect(
        self,
        r: Rect,
        *,
        weight: float = FITTING,
        colour: str = "",
        fill: str = "none",
        round_: float = 0,
        dash: str = "",
    ) -> None:
        """A box with its sides upright."""
        extra: dict[str, str | float] = {"stroke_dasharray": dash} if dash else {}
        if round_:
            extra["rx"] = round_
        self.add(
            "rect",
            x=r.left,
            y=r.top,
            width=r.right - r.left,
            height=r.bottom - r.top,
            fill=fill,
            stroke=(colour or self.palette.ink) if weight else "none",
            stroke_width=weight,
            **extra,
        )

    def circle(
        self, at: Xy, radius: float, *, weight: float = FITTING, colour: str = "", fill: str = "none"
    ) -> None:
        """A circle."""
        self.add(
            "circle",
            cx=at[0],
            cy=at[1],
            r=radius,
            fill=fill,
            stroke=(colour or self.palette.ink) if weight else "none",
            stroke_width=weight,
        )

    def path(self, d: str, *, weight: float = FITTING, colour: str = "", fill: str = "none") -> None:
        """A path in SVG's own notation."""
        stroke = (colour or self.palette.ink) if weight else "none"
        self.add("path", d=d, fill=fill, stroke=stroke, stroke_width=weight)

    def text(
        self,
        at: Xy,
        words: str,
        *,
        size: float = TEXT,
        colour: str = "",
        strong: bool = False,
        anchor: str = "start",
        halo: bool = False,
    ) -> None:
        """One line of text on its baseline; ``halo`` keeps the paper clear around it.

        The width that was reckoned with is written down, so that another font than ours fits it too.
        """
        attributes: dict[str, str | float] = {"x": at[0], "y": at[1], "font_size": size}
        attributes["textLength"] = text_width(words, size, strong=strong)
        attributes["lengthAdjust"] = "spacingAndGlyphs"
        attributes["fill"] = colour or self.palette.ink
        if strong:
            attributes["font_weight"] = 600
        if anchor != "start":
            attributes["text_anchor"] = anchor
        if halo:
            attributes |= {"stroke": self.palette.paper, "stroke_width": 3, "paint_order": "stroke"}
        self.parts.append(f"<text {_attributes(attributes)}>{escape(words)}</text>")

    def svg(self, *, width: float, height: float, title: str, says: str) -> str:
        """The whole picture, with a name and a description for those who do not see it."""
        w, h = figure(width), figure(height)
        role = "group" if self.ways else "img"
        head = (
            f'<svg xmlns="http://www.w3.org/2000/svg" width="{w}" height="{h}" viewBox="0 0 {w} {h}" '
            f'role="{role}" font-family="{FAMILY}, sans-serif" stroke-linejoin="round">'
            f"<title>{escape(title)}</title><desc>{escape(says)}</desc>"
        )
        return "\n".join([head, *self.parts, "</svg>", ""])


def _attributes(attributes: dict[str, str | float]) -> str:
    return " ".join(
        f"{name.replace('_', '-')}={quoteattr(value if isinstance(value, str) else figure(value))}"
        for name, value in attributes.items()
    )


def text_width(words: str, size: float = TEXT, *, strong: bool = False) -> float:
    """Width of one line as the paper's own font sets it."""
    return face(strong).width(words, size)


def wrapped(words: str, *, width: float, size: float = TEXT, strong: bool = False) -> list[str]:
    """Lines no wider than ``width``; a word that is wider on its own is broken, never cut."""
    lines = [""]
    for word in words.split():
        joined = f"{lines[-1]} {word}".strip()
        if text_width(joined, size, strong=strong) <= width:
            lines[-1] = joined
            continue
        pieces = _pieces(word, width=width, size=size, strong=strong)
        lines = [line for line in lines if line] + pieces
    return lines


def _pieces(word: str, *, width: float, size: float, strong: bool) -> list[str]:
    pieces = [""]
    for c in word:
        if pieces[-1] and text_width(pieces[-1] + c, size, strong=strong) > width:
            pieces.append("")
        pieces[-1] += c
    return pieces
