"""Houses: list, begin, open, stage, put away and back. Nothing is deleted."""

from uuid import UUID

from django.db import IntegrityError, transaction
from django.db.models import F

from secondfix.house import House as Document
from secondfix.house import as_canonical_json, read_house
from secondfix.store.accounts import require_writer
from secondfix.store.answers import HouseRow, Known, Opened, Refused, Saved, UnknownError
from secondfix.store.ids import now
from secondfix.store.models import Account, Edit, House, Stage
from secondfix.store.packing import digest_of, pack
from secondfix.store.plain import plain
from secondfix.store.told import told


def houses(*, away: bool = False) -> tuple[HouseRow, ...]:
    """The houses by name, or those put away."""
    edits = (
        Edit.objects.filter(house__away_at__isnull=not away, number=F("house__number"))
        .select_related("house", "by")
        .defer("packed", "told", "house__document")
        .order_by("house__name", "house_id")
    )
    return tuple(map(_row, edits))


def house_row(house_id: str) -> HouseRow:
    """One house as the list has it, without its document. Raises UnknownError."""
    try:
        edit = (
            Edit.objects.filter(house=UUID(house_id), number=F("house__number"))
            .select_related("house", "by")
            .defer("packed", "told", "house__document")
            .get()
        )
    except (ValueError, Edit.DoesNotExist) as error:
        raise UnknownError(f"no house {house_id[:40]}") from error
    return _row(edit)


def begin_house(data: bytes, *, by: Account, words: str = "") -> Saved | Refused | Known:
    """Take in a new house from the bytes of its document, as edit 1.

    A known id is answered with Known: its house is opened and edited, never a second one made. A document
    with faults is answered with all of them, and nothing is kept: there is no house yet to keep it in.
    """
    require_writer(by)
    document = read_house(data, where="house", models={})
    if not isinstance(document, Document):
        return Refused(tuple(document))
    text = as_canonical_json(document)
    house_id, answer = UUID(document.id), Saved(1)
    try:
        with transaction.atomic():
            known = House.objects.filter(pk=house_id).first()
            if known is not None:
                return Known(document.id, known.number, known.away_at is not None)
            house = House.objects.create(
                id=house_id, name=plain(document.name), document=text, number=1, stage=Stage.SURVEY
            )
            Edit.objects.create(
                house=house, number=1, base=0, stands=True, by=by, words=plain(words) or "begun",
                packed=pack(text.encode()), asked=digest_of(0, data), told=told(answer),
            )  # fmt: skip
    except IntegrityError:  # somebody else began it in this very moment
        known = found(document.id)
        return Known(document.id, known.number, known.away_at is not None)
    return answer


def open_house(house_id: str) -> Opened:
    """The house as it stands now. Raises UnknownError."""
    house = found(house_id)
    return Opened(
        document_of(house.document), house.document, house.number, house.stage, house.away_at is not None
    )


def set_stage(house_id: str, stage: Stage, *, by: Account) -> None:
    """Say how far the job has come. Raises UnknownError."""
    require_writer(by)
    house = found(house_id)
    house.stage = Stage(stage)
    house.save(update_fields=["stage"])


def put_away(house_id: str, *, by: Account) -> None:
    """Take a house off the list; everything of it stays. Raises UnknownError."""
    require_writer(by)
    house = found(house_id)
    if house.away_at is None:
        house.away_at, house.away_by = now(), by
        house.save(update_fields=["away_at", "away_by"])


def bring_back(house_id: str, *, by: Account) -> None:
    """Put a house on the list again. Raises UnknownError."""
    require_writer(by)
    house = found(house_id)
    house.away_at, house.away_by = None, None
    house.save(update_fields=["away_at", "away_by"])


def found(house_id: str, *, lock: bool = False) -> House:
    """The row of a house, held against other writers where ``lock``. Raises UnknownError."""
    try:
        rows = House.objects.select_for_update() if lock else House.objects
        return rows.get(pk=UUID(house_id))
    except (ValueError, House.DoesNotExist) as error:
        raise UnknownError(f"no house {house_id[:40]}") from error


def document_of(text: str) -> Document:
    """A document that was saved here; one that cannot be read any more is our own fault and raises."""
    document = read_house(text.encode(), where="store", models={})
    if isinstance(document, Document):
        return document
    raise ValueError("; ".join(map(str, document)))


def _row(edit: Edit) -> HouseRow:
    house = edit.house
    return HouseRow(
        str(house.id), house.name, house.stage, edit.number, edit.at, edit.by.username, house.away_at
    )
