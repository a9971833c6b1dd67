"""Tables whose rows become slips on a narrow screen: each cell with the name of its column.

What a style sheet takes apart is no table any more to some readers of screens: the roles are said here.
"""

import re
from dataclasses import dataclass, field
from html import unescape

from django import template
from django.template.base import FilterExpression, NodeList, Parser, Token
from django.utils.html import escape
from django.utils.safestring import SafeString, mark_safe

register = template.Library()

_TAG = re.compile(r"<(/?)(table|thead|tbody|tfoot|tr|th|td|caption)\b([^>]*)>")
_HEAD = re.compile(r"<th\b[^>]*>(.*?)</th>", re.DOTALL)
_MARKUP = re.compile(r"<[^>]+>")
_SPAN = re.compile(r'colspan="(\d+)"')
_ROLES = {"table": "table", "thead": "rowgroup", "tbody": "rowgroup", "tfoot": "rowgroup", "tr": "row"}


@dataclass
class _Walk:
    """Where in the table the tags have come to."""

    heads: list[str]
    in_head: bool = True
    column: int = 0
    parts: list[str] = field(default_factory=list)

    def tag(self, found: re.Match[str]) -> str:
        closes, name, rest = found.groups()
        if closes or name == "caption":
            return found.group()
        if name in {"thead", "tbody", "tfoot"}:
            self.in_head = name == "thead"
        if name == "tr":
            self.column = 0
        role = _ROLES.get(name) or self._cell_role(name)
        named = self._named(rest) if name in {"th", "td"} else ""
        classes = _with_class(rest) if name == "table" else rest
        return f'<{name} role="{role}"{named}{classes}>'

    def _cell_role(self, name: str) -> str:
        if name == "td":
            return "cell"
        return "columnheader" if self.in_head else "rowheader"

    def _named(self, rest: str) -> str:
        at, span = self.column, _SPAN.search(rest)
        self.column += int(span.group(1)) if span else 1
        if self.in_head or span or "data-head" in rest or 'scope="row"' in rest or at >= len(self.heads):
            return ""
        return f' data-head="{escape(self.heads[at])}"' if self.heads[at] else ""


def _with_class(rest: str) -> str:
    return rest.replace('class="', 'class="stacks ', 1) if 'class="' in rest else f' class="stacks"{rest}'


def stacked(markup: str) -> str:
    """One table's markup, its roles said and every cell named after the head of its column."""
    top = markup[: markup.find("</thead>")]
    heads = [" ".join(unescape(_MARKUP.sub("", h)).split()) for h in _HEAD.findall(top)]
    return _TAG.sub(_Walk(heads).tag, markup)


class _Stacks(template.Node):
    """The node of the tag: one table, and what its caption is put together of."""

    def __init__(self, nodelist: NodeList, words: list[FilterExpression]) -> None:
        self.nodelist, self.words = nodelist, words

    def render(self, context: template.Context) -> SafeString:
        words = escape(", ".join(str(w.resolve(context)) for w in self.words))
        made = stacked(self.nodelist.render(context))
        return mark_safe(  # noqa: S308 - what the template escaped, and the words escaped here
            f'<div class="rolls" role="region" aria-label="{words}" tabindex="0">'
            f"{_captioned(made, words)}</div>"
        )


def _captioned(made: str, words: str) -> str:
    """A caption for whoever hears the table; one that is written in the template stands."""
    if "<caption" in made:
        return made
    at = made.index(">") + 1
    return f'{made[:at]}<caption class="apart">{words}</caption>{made[at:]}'


@register.tag("stacks")
def stacks(parser: Parser, token: Token) -> _Stacks:
    """``{% stacks "Houses" %}<table>…</table>{% endstacks %}``: a table that rolls, or stacks on a phone."""
    _, *words = token.split_contents()
    nodelist = parser.parse(("endstacks",))
    parser.delete_first_token()
    return _Stacks(nodelist, [parser.compile_filter(w) for w in words])
