"""Addresses of the things of a house."""

from django.urls import path

from secondfix.web.things import views

urlpatterns = [path("house/<str:house_id>/thing/<str:thing_id>", views.thing, name="thing")]
