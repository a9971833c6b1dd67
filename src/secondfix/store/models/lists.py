"""How the device list of a house was last read: which column is what, kept for the next list."""

from django.db import models

from secondfix.store.models.houses import House


class ListMapping(models.Model):
    """The mapping of a house's device lists, as its file would have it: the latest, without history."""

    house = models.OneToOneField(
        House, primary_key=True, on_delete=models.PROTECT, related_name="list_mapping"
    )
    text = models.TextField()
    at = models.DateTimeField(db_index=True)
