"""Address of the cover sheet."""

from django.urls import path

from secondfix.web.cover import views

urlpatterns = [path("house/<str:house_id>/cover", views.cover, name="cover")]
