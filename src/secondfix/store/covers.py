"""Cover sheets: people's names and addresses, apart from the house, and erased for good when asked."""

from dataclasses import asdict

from django.db import connection, transaction

from secondfix.store.accounts import require_writer
from secondfix.store.answers import Cover
from secondfix.store.houses import found
from secondfix.store.models import Account, CoverSheet
from secondfix.store.plain import plain


def cover(house_id: str) -> Cover | None:
    """The cover sheet of a house; None where there is none, or it was erased. Raises UnknownError."""
    row = CoverSheet.objects.filter(house=found(house_id)).first()
    return Cover(row.customer, row.address, row.reached_by, row.note) if row else None


def write_cover(house_id: str, sheet: Cover, *, by: Account) -> None:
    """Put a cover sheet in the place of what stood. No history of it is kept. Raises UnknownError."""
    require_writer(by)
    values = {name: plain(words) for name, words in asdict(sheet).items()}
    with transaction.atomic():
        CoverSheet.objects.update_or_create(house=found(house_id, lock=True), defaults=values)
    _overwrite()


def erase_cover(house_id: str, *, by: Account) -> None:
    """Erase names and addresses from the database's files too; backups made before still hold them.

    Where somebody reads in that very moment, SQLite's log is emptied with the next save after it.
    """
    require_writer(by)
    CoverSheet.objects.filter(house=found(house_id)).delete()
    _overwrite()


def _overwrite() -> None:
    """Leave no copy behind: SQLite zeroes what is freed (secure_delete), and its log is emptied here."""
    with connection.cursor() as cursor:
        if connection.vendor == "sqlite":
            cursor.execute("PRAGMA wal_checkpoint(TRUNCATE)")
        elif not connection.in_atomic_block:
            cursor.execute("VACUUM store_coversheet")
