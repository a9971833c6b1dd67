"""Django's record of this app."""

from django.apps import AppConfig
from django.db.models.signals import post_migrate

from secondfix.store.never_changed import lay


class StoreConfig(AppConfig):
    """The tables of the desk."""

    name = "secondfix.store"
    label = "store"
    verbose_name = "Store"

    def ready(self) -> None:
        """Guards are laid on the tables whenever these were brought up to date."""
        post_migrate.connect(lay, sender=self)
