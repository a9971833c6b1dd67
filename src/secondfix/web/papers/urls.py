"""Addresses of the papers."""

from django.urls import path

from secondfix.web.papers import views

urlpatterns = [
    path("house/<str:house_id>/papers", views.papers, name="papers"),
    path("house/<str:house_id>/drawing/<str:drawing_file>.svg", views.drawing, name="drawing"),
    path("house/<str:house_id>/papers/<str:job_id>", views.job, name="job"),
    path("house/<str:house_id>/papers/<str:job_id>/<str:name>", views.job_file, name="job-file"),
    path("house/<str:house_id>/papers/<str:job_id>/<str:name>/<int:number>", views.page, name="page"),
    path(
        "house/<str:house_id>/papers/<str:job_id>/<str:name>/<int:number>.png",
        views.page_png,
        name="page-png",
    ),
]
