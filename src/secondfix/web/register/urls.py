"""Addresses of the register and of a house's first sheet."""

from django.urls import path

from secondfix.web.register import views

urlpatterns = [
    path("", views.register, name="register"),
    path("new", views.new, name="new"),
    path("away", views.away, name="away"),
    path("house/<str:house_id>/", views.house, name="house"),
]
