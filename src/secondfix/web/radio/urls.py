"""Addresses of radio."""

from django.urls import path

from secondfix.web.radio import measuring_views, surveying_views, views

urlpatterns = [
    path("house/<str:house_id>/radio", views.radio, name="radio"),
    path("house/<str:house_id>/radio/plan", views.plan, name="radio-plan"),
    path("house/<str:house_id>/measured-links", measuring_views.measured_links, name="measured-links"),
    path("house/<str:house_id>/channels", surveying_views.channels, name="channels"),
    path("house/<str:house_id>/radio/work/<str:job_id>", views.work, name="radio-work"),
]
