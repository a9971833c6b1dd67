"""Addresses of rooms, boxes and circuits."""

from django.urls import path

from secondfix.web.building import views

urlpatterns = [path("house/<str:house_id>/building", views.building, name="building")]
