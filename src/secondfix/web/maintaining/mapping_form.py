"""Which column of a device list is what, as a form says it; a writer's is kept with the house."""

import json
from collections.abc import Iterator
from dataclasses import dataclass

from django.core.files.uploadedfile import UploadedFile
from django.http import HttpRequest

from secondfix.actions.reconcile import columns_of
from secondfix.exchange import LARGEST_LIST_BYTES, Columns, Mapping, Table, mapping_as_json, read_mapping
from secondfix.house import Fault
from secondfix.store import door
from secondfix.web.access import person
from secondfix.web.maintaining.shelf import Held, held, hold

COLUMN_LABELS = {
    "address": "Address", "node": "Node number", "endpoint": "Endpoint or entry number", "name": "Name",
    "room": "Room", "purpose": "Purpose", "model": "Model",
}  # fmt: skip
assert COLUMN_LABELS.keys() == Columns.model_fields.keys()
_LARGEST_MAPPING = 1024 * 1024
_MOST_WORDS = 300


@dataclass(frozen=True, slots=True)
class Words:
    """Words of one column that must be led to ours: each with what it leads to so far."""

    key: str
    label: str
    rows: tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True)
class ListForm:
    """A list on its way: the key it is held under, its table once read, the mapping once one is said."""

    key: str = ""
    file: Held | None = None
    table: Table | None = None
    mapping: Mapping | None = None
    faults: tuple[Fault, ...] = ()

    @property
    def chosen(self) -> dict[str, str]:
        """The column chosen for each thing."""
        columns = self.mapping.columns if self.mapping else Columns()
        return {field: getattr(columns, field) or "" for field in COLUMN_LABELS}

    @property
    def words(self) -> tuple[Words, ...]:
        """Words of purpose and model in the list, with what each leads to."""
        if self.table is None or self.mapping is None:
            return ()
        sides = (("purpose", "purposes"), ("model", "models"))
        return tuple(w for field, key in sides if (w := self._words(field, key)) is not None)

    def _words(self, field: str, key: str) -> Words | None:
        assert self.table is not None and self.mapping is not None  # noqa: PT018 - `words` asked
        column = getattr(self.mapping.columns, field)
        if column not in self.table.columns:
            return None
        at = self.table.columns.index(column)
        said = list(dict.fromkeys(row.cells[at] for row in self.table.rows if row.cells[at]))[:_MOST_WORDS]
        leads = getattr(self.mapping, key)
        return Words(key, column, tuple((word, str(leads.get(word, ""))) for word in said))


def list_form(request: HttpRequest, house_id: str | None) -> ListForm:
    """What was sent: a new file, or the same with its columns chosen; None where a house is to be begun."""
    by = person(request).username
    sent = request.FILES.get("list")
    if isinstance(sent, UploadedFile):
        data = sent.read(LARGEST_LIST_BYTES + 1)
        file = Held((sent.name or "list")[:120], bytes(data), by)
        key = "" if len(data) > LARGEST_LIST_BYTES else hold(file.name, file.data, by=by)
    else:
        key = request.POST.get("held", "")
        again = held(key, by=by)
        if again is None:
            fault = Fault("form", "list", "no file at hand", "the list, chosen once more")
            return ListForm(faults=(fault,))
        file = again
    said = _said(request)
    if isinstance(said, list):
        return ListForm(key, file, faults=tuple(said))
    bare = columns_of(file.data, where=file.name, mapping=None)
    for mapping in [said] if said else _remembered(request, house_id):
        own_reading = mapping.delimiter or mapping.encoding or mapping.sheet
        table = columns_of(file.data, where=file.name, mapping=mapping) if own_reading else bare
        if isinstance(table, Table) and _fits(mapping, table):
            _remember(request, house_id, mapping)
            return ListForm(key, file, table, mapping)
        if isinstance(table, list) and said:
            return ListForm(key, file, None, mapping, tuple(table))
    if isinstance(bare, list):
        return ListForm(key, file, faults=tuple(bare))
    return ListForm(key, file, bare)  # of a list that nobody has said yet: its columns are asked


def _fits(mapping: Mapping, table: Table) -> bool:
    asked = [c for field in COLUMN_LABELS if (c := getattr(mapping.columns, field)) is not None]
    return all(column in table.columns for column in asked)


def _said(request: HttpRequest) -> Mapping | list[Fault] | None:
    """From a mapping file, or from the form's columns; None where neither came."""
    sent = request.FILES.get("mapping")
    if isinstance(sent, UploadedFile):
        return read_mapping(bytes(sent.read(_LARGEST_MAPPING)), where=(sent.name or "mapping")[:120])
    return _typed(request) if "column:name" in request.POST else None


def _remembered(request: HttpRequest, house_id: str | None) -> Iterator[Mapping]:
    """As it was said the last time for this house, and then for lists of other houses of the firm."""
    own = [request.session.get(f"mapping {house_id}")]
    if house_id is not None:
        kept = door.list_mapping(house_id)
        own = [kept, *own] if person(request).may_write else [*own, kept]
    for text in own:
        if isinstance(text, str) and isinstance(read := _read(text), Mapping):
            yield read
    for text in door.latest_mappings():
        if isinstance(read := _read(text), Mapping):  # ids of another house's networks mean nothing here
            yield read.model_copy(update={"network": None, "network_name": None})


def _read(text: str) -> Mapping | list[Fault]:
    return read_mapping(text.encode(), where="mapping")


def _remember(request: HttpRequest, house_id: str | None, mapping: Mapping) -> None:
    """Between the steps of the form with the session; beyond it with the house, where a writer says it."""
    text = mapping_as_json(mapping)
    request.session[f"mapping {house_id}"] = text
    if house_id is not None and person(request).may_write:
        door.keep_mapping(house_id, text, by=person(request))


def _typed(request: HttpRequest) -> Mapping | list[Fault]:
    columns = {f: c for f in COLUMN_LABELS if (c := request.POST.get(f"column:{f}", ""))}
    plain: dict[str, object] = {"format": 1, "columns": columns}
    for key in ("purposes", "models"):
        head = f"{key}:"
        plain[key] = {
            name.removeprefix(head): str(chosen)
            for name, chosen in request.POST.items()
            if name.startswith(head) and chosen
        }
    for key in ("network", "network_name", "protocol", "delimiter", "encoding", "sheet"):
        if value := request.POST.get(key, "").strip():
            plain[key] = value
    return read_mapping(json.dumps(plain, ensure_ascii=False).encode(), where="form")
