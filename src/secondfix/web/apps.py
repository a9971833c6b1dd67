"""The pages as Django knows them: templates and static files, no tables."""

from django.apps import AppConfig


class WebConfig(AppConfig):
    """Found by Django under the package's name."""

    name = "secondfix.web"
    label = "web"
