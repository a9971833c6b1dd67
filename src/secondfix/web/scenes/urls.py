"""Addresses of the scenes."""

from django.urls import path

from secondfix.web.scenes import views

urlpatterns = [
    path("house/<str:house_id>/scenes", views.scenes, name="scenes"),
    path("house/<str:house_id>/scenes/<str:scene_id>", views.scene, name="scene"),
]
