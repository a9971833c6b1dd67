"""The key ring: sealed codes, and who was shown which."""

from django.db import models

from secondfix.store.ids import new_id, now
from secondfix.store.models.accounts import Account
from secondfix.store.models.houses import House


class KeyEntry(models.Model):
    """One code, sealed under a key outside the database. A later one of its reference takes its place."""

    id = models.UUIDField(primary_key=True, default=new_id, editable=False)
    house = models.ForeignKey(House, on_delete=models.PROTECT, related_name="keys")
    reference = models.CharField(max_length=5)
    sealed = models.BinaryField()
    at = models.DateTimeField(default=now)
    by = models.ForeignKey(Account, on_delete=models.PROTECT, related_name="+")
    replaced = models.BooleanField(default=False)

    class Meta:
        constraints = (
            models.UniqueConstraint(
                fields=["house", "reference"], condition=models.Q(replaced=False), name="one_code_a_reference"
            ),
        )


class KeyShown(models.Model):
    """Somebody was shown a code: never changed."""

    id = models.UUIDField(primary_key=True, default=new_id, editable=False)
    entry = models.ForeignKey(KeyEntry, on_delete=models.PROTECT, related_name="showings")
    at = models.DateTimeField(default=now)
    by = models.ForeignKey(Account, on_delete=models.PROTECT, related_name="+")
