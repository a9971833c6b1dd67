"""Addresses of the history."""

from django.urls import path

from secondfix.web.history import views

urlpatterns = [
    path("house/<str:house_id>/history", views.history, name="history"),
    path("house/<str:house_id>/edit/<int:number>", views.edit, name="edit"),
    path("house/<str:house_id>/compare", views.compare, name="compare"),
    path("house/<str:house_id>/issue/<str:letter>", views.issue, name="issue"),
    path("house/<str:house_id>/issue/<str:letter>/<str:paper>", views.issue_paper, name="issue-paper"),
]
