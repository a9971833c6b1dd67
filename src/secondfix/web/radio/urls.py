"""Addresses of radio."""

from django.urls import path

from secondfix.web.radio import views

urlpatterns = [
    path("house/<str:house_id>/radio", views.radio, name="radio"),
    path("house/<str:house_id>/radio/work/<str:job_id>", views.work, name="radio-work"),
]
