"""Corrections of the survey, names and purposes, written into a draft."""

from collections.abc import Mapping
from typing import Any

from secondfix.catalogue import Model
from secondfix.journal.deeds import Named, PurposeSet
from secondfix.journal.draft import Draft, Plain, misfit, without
from secondfix.journal.facts import SurveyCorrected
from secondfix.journal.folding import Folded
from secondfix.journal.paths import Path, path_of
from secondfix.journal.subject import COLLECTION_OF, subject_of


def correct(draft: Draft, folded: Folded) -> None:
    """Objects found that the book lacks first, then single facts; those of devices wait for ``set_up``."""
    corrections = _corrections(folded)
    for entry in corrections:
        path = path_of(entry.path)
        if not path.field:
            _found_whole(draft, entry, path, adopted=entry.id in folded.taken_in)
    for entry in corrections:
        path = path_of(entry.path)
        if path.field and path.collection != "devices":
            _found_fact(draft, entry, path)


def set_up(draft: Draft, folded: Folded, models: Mapping[str, Model]) -> None:
    """Facts of devices as they stand: a device may have been fitted in the same visit.

    A setting that the device's model does not have is told and changes nothing. One made in the body that
    stood there before is not known of the new one.
    """
    for device, key in sorted(_lapsed(folded)):
        if draft.all("devices").get(device, {}).pop(key, None) is not None:
            draft.touch(f"devices.{device}", *folded.current.get((f"device:{device}", "standing"), ()))
    for entry in _corrections(folded):
        path = path_of(entry.path)
        if path.field and path.collection == "devices":
            words = _cannot_be_set(draft, entry, path, models)
            draft.refuse(entry, words) if words else _found_fact(draft, entry, path)


def _lapsed(folded: Folded) -> set[tuple[str, str]]:
    """Device and key of settings that were said, and lost their place to a body fitted afterwards."""
    said = (e for e in folded.counted.values() if isinstance(e, SurveyCorrected))
    stand = (e for e in said if e.id not in folded.withdrawn and path_of(e.path).of_body)
    return {
        (path_of(e.path).id, path_of(e.path).field)
        for e in stand
        if (e.subject, e.aspect) not in folded.current
    }


def _cannot_be_set(draft: Draft, entry: SurveyCorrected, path: Path, models: Mapping[str, Model]) -> str:
    model = models.get(draft.all("devices").get(path.id, {}).get("model", ""))
    if path.field != "after_power_loss" or entry.found is None or model is None:
        return ""
    settable = [s.value for s in model.power_loss.settable] if model.power_loss else []
    if entry.found in settable:
        return ""
    can = ", ".join(settable) or "nothing: its sheet states none"
    return f"does not fit {entry.path}: '{entry.found}'; {model.key} can be set to {can}"


def _corrections(folded: Folded) -> list[SurveyCorrected]:
    found = (
        folded.settled(subject, aspect, SurveyCorrected)
        for subject, aspect in folded.current
        if aspect == "working" or "." in aspect
    )
    return sorted((e for e in found if e is not None), key=lambda e: (len(e.path.split(".")), e.path))


def _holder(draft: Draft, path: Path) -> Plain | None:
    """The object that holds what the path names by key, or None where the draft has none."""
    if not path.inner:
        return draft.all(path.collection)
    box = draft.all("boxes").get(path.id)
    return None if box is None else box.setdefault(path.inner, {})


def _found_whole(draft: Draft, entry: SurveyCorrected, path: Path, *, adopted: bool) -> None:
    holder, key = _holder(draft, path), path.slot or path.id
    if holder is None:
        return  # a box that is not there is told once for all
    if key in holder:
        if not adopted and holder[key] != entry.found:
            draft.refuse(entry, f"gives {entry.path} whole, which the book has: it is corrected by its facts")
    elif not isinstance(entry.found, dict):
        draft.refuse(entry, f"gives no object for {entry.path}, which the book lacks")
    elif words := misfit(path.part, entry.found):
        draft.refuse(entry, f"does not fit {entry.path}: {words}")
    else:
        holder[key] = dict(entry.found)
        draft.touch(entry.path, entry)


def _found_fact(draft: Draft, entry: SurveyCorrected, path: Path) -> None:
    holder = _holder(draft, path) or {}
    have: Plain | None = holder.get(path.slot or path.id)
    if have is None:
        if draft.holds(subject_of(entry.subject)):  # else told once for all with the subjects not found
            draft.refuse(entry, f"speaks of {entry.path}, which is not in the house")
        return
    new = _with_duty(have, entry.found) if path.field == "duty" else _with_fact(have, path.field, entry.found)
    if words := misfit(path.part, new):
        draft.refuse(entry, f"does not fit {entry.path}: {words}")
        return
    have.clear()
    have.update(new)
    draft.touch(entry.path.removesuffix(".duty") if path.field == "duty" else entry.path, entry)


def _with_fact(have: Plain, field: str, found: Any) -> Plain:
    return without(have, [field]) if found is None else {**have, field: found}


def _with_duty(have: Plain, found: Any) -> Plain:
    rest = without(have, ["duty", "load", "extends"])
    if isinstance(found, dict):
        return {**rest, **found}
    return {**rest, "duty": "not_known" if found is None else found}


def name_things(draft: Draft, folded: Folded) -> None:
    """Names given on site, and purposes of loads. Names of entries stand in no document: they are remarks."""
    for named in folded.each("named", Named):
        _set(draft, named, "name", named.name)
    for purpose in folded.each("purpose_set", PurposeSet):
        _set(draft, purpose, "purpose", purpose.purpose.value)


def _set(draft: Draft, entry: Named | PurposeSet, field: str, value: str) -> None:
    subject = subject_of(entry.subject)
    collection = COLLECTION_OF.get(subject.kind)
    have = draft.all(collection).get(subject.id) if collection else None
    if have is not None:
        have[field] = value
        draft.touch(f"{collection}.{subject.id}", entry)
