"""Which column of a device list is what, as a form says it; kept with the session."""

import json
from dataclasses import dataclass

from django.core.files.uploadedfile import UploadedFile
from django.http import HttpRequest

from secondfix.actions.reconcile import columns_of
from secondfix.exchange import LARGEST_LIST_BYTES, Columns, Mapping, Table, mapping_as_json, read_mapping
from secondfix.house import Fault
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


def list_form(request: HttpRequest, about: str) -> ListForm:
    """What was sent: a new file, or the same with its columns chosen. ``about`` names the mapping kept."""
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
    mapping = _mapping(request, about)
    if isinstance(mapping, list):
        return ListForm(key, file, faults=tuple(mapping))
    table = columns_of(file.data, where=file.name, mapping=mapping)
    if isinstance(table, list):
        return ListForm(key, file, None, mapping, tuple(table))
    if mapping is not None and not _fits(mapping, table):
        mapping = None  # of another controller's list: the columns are asked anew
    if mapping is not None:
        request.session[f"mapping {about}"] = mapping_as_json(mapping)
    return ListForm(key, file, table, mapping)


def _fits(mapping: Mapping, table: Table) -> bool:
    asked = [c for field in COLUMN_LABELS if (c := getattr(mapping.columns, field)) is not None]
    return all(column in table.columns for column in asked)


def _mapping(request: HttpRequest, about: str) -> Mapping | list[Fault] | None:
    """From a mapping file, from the form's columns, or as it was said the last time."""
    sent = request.FILES.get("mapping")
    if isinstance(sent, UploadedFile):
        return read_mapping(bytes(sent.read(_LARGEST_MAPPING)), where=(sent.name or "mapping")[:120])
    if "column:name" not in request.POST:
        kept = request.session.get(f"mapping {about}")
        read = read_mapping(kept.encode(), where="mapping") if isinstance(kept, str) else None
        return None if isinstance(read, list) else read
    return _typed(request)


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
