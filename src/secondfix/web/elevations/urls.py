"""Addresses of the room elevations."""

from django.urls import path

from secondfix.web.elevations import views

urlpatterns = [
    path("house/<str:house_id>/elevations", views.elevations, name="elevations"),
    path("house/<str:house_id>/elevations/<str:room_id>", views.elevations, name="elevation"),
]
