"""Entries of the journal, as they came."""

from django.db import models

from secondfix.store.ids import now
from secondfix.store.models.accounts import Account
from secondfix.store.models.houses import House


class JournalEntry(models.Model):
    """One entry, never changed: its line word for word, under the id that its writer made."""

    id = models.UUIDField(primary_key=True)
    house = models.ForeignKey(House, on_delete=models.PROTECT, related_name="entries")
    line = models.TextField()
    arrived_at = models.DateTimeField(default=now)
    by = models.ForeignKey(Account, on_delete=models.PROTECT, related_name="+")
