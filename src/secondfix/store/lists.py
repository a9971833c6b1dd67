"""Mappings of device lists: said once for a house, at hand for its next list and for a list like it."""

from secondfix.store.accounts import require_writer
from secondfix.store.houses import found
from secondfix.store.ids import now
from secondfix.store.models import Account, ListMapping

LARGEST_MAPPING_BYTES = 1024 * 1024


def list_mapping(house_id: str) -> str | None:
    """The mapping that was kept for a house; None where none was. Raises UnknownError."""
    row = ListMapping.objects.filter(house=found(house_id)).first()
    return row.text if row else None


def latest_mappings(most: int = 4) -> tuple[str, ...]:
    """Mappings of the firm's houses, no two alike, the latest first: for a list of a house that has none."""
    texts = ListMapping.objects.order_by("-at").values_list("text", flat=True)[: most * 8]
    return tuple(dict.fromkeys(texts))[:most]


def keep_mapping(house_id: str, text: str, *, by: Account) -> bool:
    """Keep a mapping in the place of what stood; False where it is too large to keep or stands already."""
    require_writer(by)
    house = found(house_id)
    clean = text.replace("\0", "")
    if len(clean.encode()) > LARGEST_MAPPING_BYTES or list_mapping(house_id) == clean:
        return False
    ListMapping.objects.update_or_create(house=house, defaults={"text": clean, "at": now()})
    return True
