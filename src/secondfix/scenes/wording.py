"""Rules, commands and starts in words, the same whatever their order in the file."""

from secondfix.house import Command, House, SceneRule, Selector, Start
from secondfix.scenes.span import Span
from secondfix.scenes.timing import SceneTime
from secondfix.terms import PURPOSES

PRESS_WORDS = {"once": "once", "twice": "twice", "three_times": "three times", "held": "held"}


def selector_words(house: House, selector: Selector) -> str:
    """``lighting in Hall tagged night``."""
    words = [PURPOSES[selector.purpose].label if selector.purpose else ""]
    if selector.load:
        words.append(f"{selector.load} {house.loads[selector.load].name}")
    words += [f"in {house.rooms[selector.room].name}"] if selector.room else []
    words += [f"on {house.storeys[selector.storey].name}"] if selector.storey else []
    words += [f"tagged {selector.tag}"] if selector.tag else []
    text = " ".join(word for word in words if word)
    if selector.purpose or selector.load:
        return text
    return f"every load {text}".strip()


def rule_words(house: House, rule: SceneRule) -> str:
    """``lighting in Hall, leaving out L4 Porch: on 40``."""
    out = sorted(selector_words(house, s) for s in rule.leave_out)
    text = selector_words(house, rule.select)
    if out:
        text += f", leaving out {', '.join(out)}"
    return f"{text}: {to_words(rule.to, rule.level_pct)}"


def to_words(to: str, level_pct: int | None) -> str:
    """``off``, ``on``, ``on 40`` (per cent)."""
    return to if level_pct is None else f"{to} {level_pct}"


def command_words(command: Command) -> str:
    """``D04 entry 2: off``."""
    entry = "whole-device entry" if command.entry == 0 else f"entry {command.entry}"
    return f"{command.device} {entry}: {command.to}"


def start_words(start: Start) -> str:
    """``B01.3 held``, ``06:40 mon tue``, ``20 min before sunset``, ``sensor D09``, ``D10 button 4 held``."""
    days = "".join(f" {day}" for day in start.days)
    if start.by == "gang":
        return f"{start.gang} {PRESS_WORDS[start.press or 'once']}"
    if start.by == "sensor":
        if start.button is None:
            return f"sensor {start.device}"
        press = f" {PRESS_WORDS[start.press]}" if start.press else ""
        return f"{start.device} button {start.button}{press}"
    if start.by == "time":
        return f"{start.at}{days}"
    offset = start.offset_min or 0
    shift = f"{abs(offset)} min {'after' if offset > 0 else 'before'} " if offset else ""
    return f"{shift}{start.sun}{days}"


def span_words(span: Span) -> str:
    """A time in seconds: ``1.2 s (0.85 to 2.1)``, two figures that count, the range where there is one."""
    low, value, high = (f"{_two_figures(ms / 1000)}" for ms in (span.low, span.value, span.high))
    return f"{value} s" if low == high else f"{value} s ({low} to {high})"


def _two_figures(seconds: float) -> str:
    return f"{seconds:.2f}" if seconds < 1 else f"{seconds:.1f}" if seconds < 10 else f"{seconds:.0f}"


def time_words(time: SceneTime) -> tuple[str, str]:
    """How long it takes one by one and as a group: a time, ``cannot tell``, or ``no gain`` for the latter."""
    one_by_one = span_words(time.one_by_one_ms) if time.one_by_one_ms else "cannot tell"
    if time.as_group_ms:
        return one_by_one, span_words(time.as_group_ms)
    return one_by_one, "cannot tell" if time.group_open else "no gain"
