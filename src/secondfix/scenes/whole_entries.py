"""Direct commands: what a whole-device entry reaches or doubles, and entries that switch nothing."""

from collections.abc import Iterator

from secondfix.findings import Finding, Rule, Severity, cannot_tell, fails
from secondfix.scenes.asked import Asked
from secondfix.scenes.crossing import Crossing, Reason, Resolution
from secondfix.scenes.looks import reach_looks
from secondfix.scenes.reaching import Reach, Via
from secondfix.scenes.wording import command_words

WHOLE = Rule(
    "scenes.whole_entry",
    "Does a whole-device entry reach only loads that the scene means, and double no command?",
    "Z-Wave Multi Channel command class: the root device offers what end point 1 offers (secondary); "
    "which gangs it switches is the maker's statement",
)
ENTRY = Rule(
    "scenes.entry",
    "Does every entry that a scene commands directly switch something known?",
    "common practice, no source",
)
RULES = (WHOLE, ENTRY)
_REMEDY = "Command the gangs one by one, by rules or by their own entries."


def check(asked: Asked) -> Iterator[Finding]:
    """Answers for scenes that command a whole-device entry, and for those that command entries directly."""
    for resolution in asked.resolutions:
        reaches = asked.reaches[resolution.scene_id]
        whole = [one for one in reaches if one.via is Via.WHOLE]
        if whole:
            found = [f for one in whole for f in _whole(asked, resolution, one)]
            yield from asked.or_passes(_once(found), WHOLE, resolution)
        if reaches:
            found = [f for one in reaches for f in _entry(asked, resolution, one)]
            # What an untested whole-device entry switches is asked by WHOLE; it is no pass here meanwhile.
            if any(one.to_be_tested for one in reaches):
                yield from found
            else:
                yield from asked.or_passes(found, ENTRY, resolution)


def _once(found: list[Finding]) -> list[Finding]:
    """Two commands may reach one load: the same sentence is said once."""
    return list(dict.fromkeys(found))


def _whole(asked: Asked, resolution: Resolution, one: Reach) -> Iterator[Finding]:
    if one.to_be_tested or one.open_gangs:
        yield _not_told(asked, resolution, one)
    for load_id in one.surely:
        crossing = resolution.crossings[load_id]
        if crossing.reason in {Reason.WHOLE_LEFT_OUT, Reason.WHOLE_DIFFERS}:
            yield _reaches(asked, one, crossing)
        elif crossing.reason in {Reason.RULE, Reason.DIRECT_COMMAND}:
            yield _says_twice(asked, one, crossing)
        elif crossing.reason is Reason.WHOLE_ENTRY and asked.schedule.house.scenes[resolution.scene_id].rules:
            yield _unnamed(asked, one, crossing)


def _reaches(asked: Asked, one: Reach, crossing: Crossing) -> Finding:
    return fails(
        WHOLE,
        crossing.worst or Severity.FAULT,
        crossing.scene_id,
        f"The whole-device entry of {one.command.device} also switches "
        f"{asked.load_words(crossing.load_id)} {one.command.to}. {crossing.why}",
        value=command_words(one.command),
        limit="no load that a rule, an exception or the policy of its purpose leaves out",
        remedy=_REMEDY,
        also=(crossing.load_id, one.command.device),
    )


def _says_twice(asked: Asked, one: Reach, crossing: Crossing) -> Finding:
    return fails(
        WHOLE,
        Severity.FAULT,
        crossing.scene_id,
        f"{asked.load_words(crossing.load_id)} is commanded twice: by its gang and by the whole-device "
        f"entry of {one.command.device}.",
        value="; ".join(crossing.by),
        limit="one command per load",
        remedy="Take the command to the whole-device entry out of the scene.",
        also=(crossing.load_id, one.command.device),
    )


def _unnamed(asked: Asked, one: Reach, crossing: Crossing) -> Finding:
    return fails(
        WHOLE,
        Severity.ADVICE,
        crossing.scene_id,
        f"{asked.load_words(crossing.load_id)} is switched only because the whole-device entry of "
        f"{one.command.device} reaches it; no rule names it.",
        value=command_words(one.command),
        limit="loads that a rule names",
        remedy=_REMEDY,
        also=(crossing.load_id, one.command.device),
    )


def _not_told(asked: Asked, resolution: Resolution, one: Reach) -> Finding:
    dangers = (resolution.crossings[load].worst is Severity.DANGER for load in (*one.surely, *one.perhaps))
    what = "is to be tested" if one.to_be_tested else "includes a gang that leaves it open"
    return cannot_tell(
        WHOLE,
        Severity.DANGER if any(dangers) else Severity.FAULT,
        resolution.scene_id,
        f"What the whole-device entry of {one.command.device} switches {what}.",
        looks=list(reach_looks(asked.schedule, one)),
        value=command_words(one.command),
        remedy=_REMEDY,
        also=(one.command.device, *one.open_gangs),
    )


def _entry(asked: Asked, resolution: Resolution, one: Reach) -> Iterator[Finding]:
    words = command_words(one.command)
    if one.idle:
        yield fails(
            ENTRY,
            Severity.ADVICE,
            resolution.scene_id,
            f"The direct command to {words} switches nothing.",
            value=words,
            limit="an entry that feeds a load",
            remedy="Take it out of the scene.",
            also=(one.command.device,),
        )
    elif one.via is Via.GANG and one.open_gangs:
        yield cannot_tell(
            ENTRY,
            Severity.FAULT,
            resolution.scene_id,
            f"It is not known what the direct command to {words} switches.",
            looks=list(reach_looks(asked.schedule, one)),
            value=words,
            also=(one.command.device, *one.open_gangs),
        )
