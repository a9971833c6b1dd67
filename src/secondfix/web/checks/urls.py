"""Addresses of the checks."""

from django.urls import path

from secondfix.web.checks import views

urlpatterns = [
    path("house/<str:house_id>/checks", views.checks, name="checks"),
    path("house/<str:house_id>/survey", views.survey, name="survey"),
    path("house/<str:house_id>/assumptions", views.assumptions, name="assumptions"),
]
