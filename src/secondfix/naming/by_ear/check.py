"""Names said aloud are told apart by ear: advice at most."""

from secondfix.assumptions import Assumptions
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import House
from secondfix.naming.by_ear.clashes import Clash, Ear, Pair, Unknown, find_clashes
from secondfix.naming.by_ear.distance import same_rhythm
from secondfix.naming.by_ear.judge import (
    ALIKE_PCT,
    FINAL_PCT,
    NEAR_PCT,
    Limits,
    Verdict,
    ends,
    phrase,
    settled,
    shares,
)
from secondfix.naming.by_ear.proposal import Renaming
from secondfix.naming.by_ear.spoken import spoken_names
from secondfix.naming.by_ear.words import distinguishing
from secondfix.naming.named import Called

RULE = Rule(
    "names.by_ear",
    "Can every name that is said aloud be told from the others by ear?",
    "Miller & Nicely 1955 (secondary) and English Consistent Confusion Corpus 1.2 (computed) for what is "
    "confused; the limits are a trial rule, fit on a list, not validated",
    (ALIKE_PCT, NEAR_PCT, FINAL_PCT),
)
RULES: tuple[Rule, ...] = (RULE,)


def sound_not_asked(house: House) -> str | None:
    """Why nothing is asked about the sound of this house's names; None where it is asked."""
    if house.naming.spoken_language is None:
        return (
            "How names sound was not asked: the house does not say that they are said in English "
            "(naming, spoken_language)."
        )
    return None


def check(called: Called, assumptions: Assumptions) -> list[Finding]:
    """One answer per name that stands clear of all others, per pair of phrases that clash, and per word
    that the dictionary lacks where it could change an answer. None where the house states no language.
    """
    if sound_not_asked(called.schedule.house):
        return []
    ear = Ear(ends(assumptions))
    names = spoken_names(called)
    found = find_clashes(names, ear)
    limits = settled(assumptions)
    renaming = Renaming(called, names, ear)
    answers = [_clash(renaming, clash, limits) for clash in found.clashes]
    answers += [_unknown(word, unknown) for word, unknown in found.unknown.items()]
    marred = {(n.kind, n.place) for clash in found.clashes for pair in clash.pairs for n in pair}
    marred |= {(n.kind, n.place) for u in found.unknown.values() for n in (*u.held_by, *u.beside)}
    clear = [n for n in names if n.words and (n.kind, n.place) not in marred]
    return [*answers, *(passes(RULE, n.place, value=n.name, limit=_limit(limits)) for n in clear)]


def _clash(renaming: Renaming, clash: Clash, limits: Limits) -> Finding:
    first, second = clash.pairs[0]
    places = [n.place for pair in clash.pairs for n in pair]
    also = tuple(p for p in dict.fromkeys(places) if p != first.place)
    value = _value(clash, limits)
    if clash.heard.strict is Verdict.APART:
        look = Look(
            first.place, "name", f"say '{first.name}' and '{second.name}' to somebody in the next room"
        )
        return cannot_tell(
            RULE,
            Severity.ADVICE,
            first.place,
            f"It cannot be told whether '{first.name}' and '{second.name}' sound alike.",
            looks=[look],
            value=value,
            limit=_limit(limits),
            remedy=f"Have both said in the next room: where they are told apart, set {NEAR_PCT} for this "
            "house to one value without a range; else rename one.",
            also=also,
        )
    how = "sound alike" if clash.heard.strict is Verdict.ALIKE else "may be misheard for each other"
    others = len(clash.pairs) - 1
    more = f" Pairs of names with the same trouble: {others} more." if others else ""
    return fails(
        RULE,
        Severity.ADVICE,
        first.place,
        f"'{first.name}' and '{second.name}' {how}.{more}",
        value=value,
        limit=_limit(limits),
        remedy=_remedy(renaming, (first, second)),
        also=also,
    )


def _remedy(renaming: Renaming, pair: Pair) -> str:
    proposal = renaming.propose(pair)
    start = f"Rename {proposal.rename.called}: put a word before it that says {proposal.kind_of_word}"
    if not proposal.names:
        return f"{start}, one that shares no vowel with the other names (none of our own list will do)."
    *most, last = [f"'{n}'" for n in proposal.names]
    listed = f"{', '.join(most)} or {last}" if most else last
    return f"{start}. No other name sounds like {listed}: take what is true of it."


def _value(clash: Clash, limits: Limits) -> str:
    whole = " / ".join(f"'{n.name}'" for n in clash.pairs[0])
    if clash.words[0] == clash.words[1]:
        return f"{whole}: the same words"
    first, second = clash.pairs[0]
    words = distinguishing(first.words, second.words)
    apart = _measured(*words, limits)
    phrases = _measured(first.words, second.words, limits)
    sides = " / ".join(f"'{' '.join(side)}'" for side in words)
    return f"{sides}: {apart}; whole names: {phrases or 'not known'}"


def _measured(a: tuple[str, ...], b: tuple[str, ...], limits: Limits) -> str:
    one, other = phrase(a), phrase(b)
    if one is None or other is None:
        return ""
    plain, longest, weighted = shares(one, other, limits)
    rhythm = "the same rhythm" if same_rhythm(one, other) else "another rhythm"
    share = round(weighted / 10 / longest)
    return f"{plain} of {longest} sounds differ, weighted {weighted / 1000:.2f} ({share} %), {rhythm}"


def _limit(limits: Limits) -> str:
    return f"more than one sound and more than {limits.near_pct} % of the sounds differ, and another rhythm"


def _unknown(word: str, unknown: Unknown) -> Finding:
    first, *others = dict.fromkeys((*unknown.held_by, *unknown.beside))
    return cannot_tell(
        RULE,
        Severity.ADVICE,
        first.place,
        f"How '{word}' is said is not known, so '{first.name}' cannot be told from other names by ear.",
        looks=[
            Look(first.place, "name", f"say '{word}' aloud beside the other names, or write another word")
        ],
        value=f"not in the dictionary: '{word}'",
        also=tuple(dict.fromkeys(n.place for n in others if n.place != first.place)),
    )
