"""Addresses of networks and devices."""

from django.urls import path

from secondfix.web.networks import views

urlpatterns = [
    path("house/<str:house_id>/networks", views.networks, name="networks"),
    path("house/<str:house_id>/choose/<str:place_id>", views.choose, name="choose"),
]
