"""Addresses of the order of joining and the worksheets."""

from django.urls import path

from secondfix.web.joining import views

urlpatterns = [
    path("house/<str:house_id>/walk", views.walk, name="walk"),
    path("house/<str:house_id>/worksheets", views.worksheets, name="worksheets"),
    path("house/<str:house_id>/worksheets.pdf", views.printed, name="worksheets-printed"),
    path("house/<str:house_id>/worksheets/<str:device_id>", views.worksheet, name="worksheet"),
]
