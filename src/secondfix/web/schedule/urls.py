"""Addresses of the switch schedule."""

from django.urls import path

from secondfix.web.schedule import views

urlpatterns = [
    path("house/<str:house_id>/schedule", views.schedule, name="schedule"),
    path("house/<str:house_id>/schedule/cells", views.cells, name="cells"),
    path("house/<str:house_id>/schedule/back", views.back, name="schedule-back"),
    path("house/<str:house_id>/schedule.<str:form>", views.out, name="schedule-out"),
    path("house/<str:house_id>/box/<str:box_id>", views.box, name="box"),
]
