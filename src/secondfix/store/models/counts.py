"""What the last check of a house counted: kept for the register, worked out again whenever it is asked."""

from django.db import models

from secondfix.store.models.houses import House


class LastCheck(models.Model):
    """The counts of the last check, and the edit that they belong to. Not a source: it may be lost."""

    house = models.OneToOneField(House, primary_key=True, on_delete=models.PROTECT, related_name="last_check")
    number = models.PositiveIntegerField()
    danger = models.PositiveIntegerField()
    fault = models.PositiveIntegerField()
    cannot_tell = models.PositiveIntegerField()
    advice = models.PositiveIntegerField()
