"""Addresses of the desk's own state."""

from django.urls import path

from secondfix.web.state import views

urlpatterns = [
    path("status", views.status, name="status"),
    path("status/backup", views.backup, name="backup"),
    path("phone", views.phone, name="phone"),
    path("phone/authority.crt", views.authority, name="authority"),
]
