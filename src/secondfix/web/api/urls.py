"""Addresses of the calls, and of the sheet that lists them."""

from django.urls import path

from secondfix.web.api import views
from secondfix.web.api.calls import api

_made, _library, _space = api.urls
_own = [path("", views.root, name="api-root"), *(p for p in _made if getattr(p, "name", "") != "api-root")]

urlpatterns = [
    path("api/", (_own, str(_library), str(_space))),
    path("house/<str:house_id>/calls", views.calls, name="calls"),
]
