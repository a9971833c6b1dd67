"""Addresses of the plans."""

from django.urls import path

from secondfix.web.plans import views

urlpatterns = [
    path("house/<str:house_id>/plans", views.plans, name="plans"),
    path("house/<str:house_id>/plans/<str:storey_id>", views.plans, name="plan"),
]
