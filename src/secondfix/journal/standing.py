"""Devices as they stand: fitted, removed, replaced, joined; and what the house says of those that left."""

from collections.abc import Callable, Collection, Mapping

from secondfix.catalogue import Model
from secondfix.journal.deeds import Excluded, Fitted, Joined, Removed
from secondfix.journal.draft import Draft, Plain
from secondfix.journal.entry import Entry
from secondfix.journal.folding import Folded
from secondfix.journal.paths import OF_BODY
from secondfix.journal.subject import subject_of

_OF_A_BODY = ("address", *OF_BODY)


def stand(draft: Draft, folded: Folded, models: Mapping[str, Model]) -> None:
    """Write who stands where into the draft; then lead what names a device that left to its successor."""
    fits = {subject_of(e.subject).id: e for e in folded.each("standing", Fitted)}
    gone = {subject_of(e.subject).id: e for e in folded.each("standing", Removed)}
    heirs = _heirs(draft, fits)
    for device, entry in gone.items():
        _leave(draft, device, entry)
    for device, successors in heirs.items():
        if not _stands_elsewhere(draft, fits.get(device), successors):
            _leave(draft, device, *successors)
    for device in sorted(fits.keys() - draft.leaving):
        _fit(draft, device, fits[device], models)
    _network(draft, folded)
    _References(draft, heirs, fits.keys(), models).lead()


def _heirs(draft: Draft, fits: dict[str, Fitted]) -> dict[str, list[Fitted]]:
    """For each device replaced, those fitted in its stead; a ring of replacements is void and told."""
    follows = {device: fit.replaces for device, fit in fits.items() if fit.replaces}
    heirs: dict[str, list[Fitted]] = {}
    for device in sorted(follows):
        if _in_ring(device, follows):
            draft.refuse(fits[device], "replaces a device that is said to replace it: neither counts")
        else:
            heirs.setdefault(follows[device], []).append(fits[device])
    return heirs


def _in_ring(device: str, follows: dict[str, str]) -> bool:
    seen, here = {device}, follows.get(device)
    while here is not None and here not in seen:
        seen.add(here)
        here = follows.get(here)
    return here == device


def _stands_elsewhere(draft: Draft, own: Fitted | None, successors: list[Fitted]) -> bool:
    """Whether a replaced device was fitted again at a stand of its own."""
    if own is None or not (own.box or own.place):
        return False
    have = draft.all("devices")
    stands = set()
    for fit in successors:
        before = have.get(subject_of(fit.subject).id, {})
        stands.add(fit.box or fit.place or before.get("box") or before.get("place"))
    return (own.box or own.place) not in stands


def _leave(draft: Draft, device: str, *entries: Entry) -> None:
    draft.leaving.add(device)
    if draft.all("devices").pop(device, None) is not None:
        draft.touch(f"devices.{device}", *entries)


def _fit(draft: Draft, device: str, fit: Fitted, models: Mapping[str, Model]) -> None:
    have: Plain = draft.all("devices").setdefault(device, {})
    draft.touch(f"devices.{device}", fit)
    if _is_other_body(fit, have):
        _other_body(draft, have, fit.model or have.get("model", ""), models)
    if fit.box and fit.box != have.get("box"):
        _drop(have, "place", "outputs", "mounts", "gangs")
    if fit.place and fit.place != have.get("place"):
        _drop(have, "box", "outputs", "mounts", "gangs")
    for key in ("model", "box", "place", "code_ref"):
        if getattr(fit, key) is not None:
            have[key] = getattr(fit, key)
    for key in ("mounts", "gangs"):
        if getattr(fit, key) is not None:
            have[key] = list(getattr(fit, key))
    if fit.outputs is not None:
        have["outputs"] = dict(sorted(fit.outputs.items()))


def _is_other_body(fit: Fitted, have: Plain) -> bool:
    """Another model, or another code: under the failed one's id perhaps, and of the same model."""
    if fit.model and fit.model != have.get("model"):
        return True
    return bool(fit.code_ref and have.get("code_ref") and fit.code_ref != have["code_ref"])


def _other_body(draft: Draft, have: Plain, key: str, models: Mapping[str, Model]) -> None:
    """Another body has not joined, has a code of its own, and no setting was made in it."""
    _drop(have, *_OF_A_BODY)
    network = draft.all("networks").get(have.get("network", ""))
    model = models.get(key)
    if network is not None and model is not None and network["protocol"] != model.protocol:
        _drop(have, "network")


def _network(draft: Draft, folded: Folded) -> None:
    entries: list[Joined | Excluded] = [*folded.each("joining", Joined), *folded.each("joining", Excluded)]
    for entry in entries:
        device = subject_of(entry.subject).id
        have = draft.all("devices").get(device)
        if have is None:
            continue
        draft.touch(f"devices.{device}", entry)
        if isinstance(entry, Excluded):
            if have.get("network") == entry.network:
                _drop(have, "network", "address")
            continue
        if have.get("network") != entry.network:
            _drop(have, "address")
        have["network"] = entry.network
        if entry.address is not None:
            have["address"] = entry.address


def _drop(have: Plain, *keys: str) -> None:
    for key in keys:
        have.pop(key, None)


class _References:
    """Scene commands, starts and outside uses that name a device that left, or an entry it lost."""

    def __init__(
        self,
        draft: Draft,
        heirs: dict[str, list[Fitted]],
        fitted: Collection[str],
        models: Mapping[str, Model],
    ) -> None:
        self._draft, self._heirs, self._fitted, self._models = draft, heirs, fitted, models

    def lead(self) -> None:
        """Lead each to the entry that took over, or drop it: both are differences from the design."""
        for key, scene in self._draft.all("scenes").items():
            self._rewrite(f"scenes.{key}", scene, "commands", self._entry)
            self._rewrite(f"scenes.{key}", scene, "starts", self._device)
        uses = self._draft.all("outside_uses")
        for key in list(uses):
            led = self._entry(uses[key]) if uses[key].get("entry") is not None else self._device(uses[key])
            if led != uses[key]:
                self._draft.touch(f"outside_uses.{key}", *self._causes(uses[key].get("device")))
                uses.pop(key) if led is None else uses.update({key: led})

    def _rewrite(self, path: str, scene: Plain, field: str, lead: Callable[[Plain], Plain | None]) -> None:
        old = scene.get(field, [])
        new = [led for one in old if (led := lead(one)) is not None]
        if new != old:
            scene[field] = new
            self._draft.touch(path, *(c for one in old for c in self._causes(one.get("device"))))

    def _causes(self, device: str | None) -> list[Entry]:
        return [] if device is None else self._draft.by.get(f"devices.{device}", [])

    def _entry(self, one: Plain) -> Plain | None:
        device, number = one["device"], one["entry"]
        while device in self._draft.leaving:
            over = [
                (subject_of(fit.subject).id, fit.takes_over[str(number)])
                for fit in self._heirs.get(device, [])
                if str(number) in fit.takes_over
            ]
            if len(over) != 1:
                return None
            device, number = over[0]
        return {**one, "device": device, "entry": number} if self._has(device, number) else None

    def _has(self, device: str, number: int) -> bool:
        """Whether a device fitted on site has such an entry, as far as its model is known."""
        model = self._models.get(self._draft.all("devices").get(device, {}).get("model", ""))
        if device not in self._fitted or model is None:
            return True
        return (0 if model.whole_entry else 1) <= number <= max(model.gangs, 1)

    def _device(self, one: Plain) -> Plain | None:
        device = one.get("device")
        while device is not None and device in self._draft.leaving:
            heirs = self._heirs.get(device, [])
            if len(heirs) != 1:
                return None
            device = subject_of(heirs[0].subject).id
        return one if device is None else {**one, "device": device}
