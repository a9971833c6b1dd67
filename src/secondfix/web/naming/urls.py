"""Addresses of the names."""

from django.urls import path

from secondfix.web.naming import views

urlpatterns = [path("house/<str:house_id>/names", views.names, name="names")]
