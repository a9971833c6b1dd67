"""Addresses of changing."""

from django.urls import path

from secondfix.web.changing import views

urlpatterns = [path("house/<str:house_id>/settle/<int:kept>", views.settle, name="settle")]
