"""Django's record of this app."""

from django.apps import AppConfig


class StoreConfig(AppConfig):
    """The tables of the desk."""

    name = "secondfix.store"
    label = "store"
    verbose_name = "Store"
