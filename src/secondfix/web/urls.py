"""Every address of the desk, group by group."""

from django.urls import include, path

urlpatterns = [
    path("", include("secondfix.web.coming_in.urls")),
    path("", include("secondfix.web.register.urls")),
    path("", include("secondfix.web.state.urls")),
    path("", include("secondfix.web.changing.urls")),
    path("", include("secondfix.web.checks.urls")),
    path("", include("secondfix.web.elevations.urls")),
    path("", include("secondfix.web.schedule.urls")),
    path("", include("secondfix.web.naming.urls")),
    path("", include("secondfix.web.scenes.urls")),
    path("", include("secondfix.web.joining.urls")),
    path("", include("secondfix.web.building.urls")),
    path("", include("secondfix.web.things.urls")),
    path("", include("secondfix.web.plans.urls")),
    path("", include("secondfix.web.networks.urls")),
    path("", include("secondfix.web.radio.urls")),
    path("", include("secondfix.web.cover.urls")),
    path("", include("secondfix.web.history.urls")),
    path("", include("secondfix.web.keys.urls")),
    path("", include("secondfix.web.journal.urls")),
    path("", include("secondfix.web.api.urls")),
    path("", include("secondfix.web.maintaining.urls")),
    path("", include("secondfix.web.papers.urls")),
]
